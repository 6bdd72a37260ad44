import { table } from "../../formula/index.js";

/**
 * Rise of cells over the ambient in full sun, by mounting.
 *
 * @function
 * @example
 * ```ts
 * import { temperatureRiseByMounting } from "pv-to-grid/module";
 * temperatureRiseByMounting({ mounting: "close roof mount", bound: "high" }).text; // "35"
 * ```
 */
export const temperatureRiseByMounting = /* @__PURE__ */ table({
  id: "module/temperature-rise-by-mounting",
  about: "rise of cells over the ambient in full sun, by mounting",
  base: { irradiance: "high sun" },
  rows: { name: "mounting", names: "in the first column" },
  rowRule: "exact",
  columns: { bound: ["low", "high"] },
  gives: { unit: "K", symbol: "ΔT" },
  source: [{ in: "RE-wrenches list:2011", clause: "rises used by practitioners: pole top, and parallel to a roof", grade: "copied" }],
  cells: `
    open rack         25  25
    close roof mount  30  35
  `,
  note: "practice of installers, not a standard; another reply of the same list allows 15 K only, which the measured models contradict",
});
