import { table } from "../../formula/index.js";

/**
 * Range in which the open-circuit voltage of one cell lies.
 *
 * @function
 * @example
 * ```ts
 * import { plausibleCellVoltage } from "pv-to-grid/module";
 * plausibleCellVoltage({ technology: "any technology", bound: "high" }).show(); // "1.3 V"
 * ```
 */
export const plausibleCellVoltage = /* @__PURE__ */ table({
  id: "module/plausible-cell-voltage",
  about: "range in which the open-circuit voltage of one cell lies",
  rows: { name: "technology", names: "in the first column" },
  rowRule: "exact",
  columns: { bound: ["low", "high"] },
  gives: { unit: "V", symbol: "range" },
  source: [{ in: "common practice", clause: "open-circuit voltages of silicon, thin-film and perovskite cells", grade: "common-practice" }],
  cells: `
    any technology  0.5  1.3
  `,
});
