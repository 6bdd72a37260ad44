import { table } from "../../formula/index.js";

/**
 * Range in which ratios of the datasheets of modules lie.
 *
 * @function
 * @example
 * ```ts
 * import { plausibleRatio } from "pv-to-grid/module";
 * plausibleRatio({ datasheetRatio: "fill factor", bound: "low" }).text; // "0.5"
 * ```
 */
export const plausibleRatio = /* @__PURE__ */ table({
  id: "module/plausible-ratio",
  about: "range in which ratios of the datasheets of modules lie",
  rows: { name: "datasheetRatio", names: "in the first column" },
  rowRule: "exact",
  columns: { bound: ["low", "high"] },
  gives: { unit: "1", symbol: "range" },
  source: [{ in: "common practice", clause: "ratios of silicon and thin-film modules", grade: "common-practice" }],
  cells: `
    power deviation    –      0.01
    fill factor        0.5    0.9
    series fuse        1.25   6
    power tolerance    -0.05  –
  `,
  note: "wide on purpose: it finds slips, it does not judge quality",
});
