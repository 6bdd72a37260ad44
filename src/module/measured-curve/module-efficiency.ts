import { formula } from "../../formula/index.js";

/**
 * Efficiency of a cell or module.
 *
 * @function
 * @example
 * ```ts
 * import { moduleEfficiency } from "pv-to-grid/module";
 * moduleEfficiency({ maximumPower: "440 W", moduleArea: "1.95 m2", irradiance: "1000 W/m2" }).show(); // "0.2256"
 * ```
 */
export const moduleEfficiency = /* @__PURE__ */ formula({
  id: "module/module-efficiency",
  about: "efficiency of a cell or module",
  takes: {
    maximumPower: { unit: "W", symbol: "P_max", about: "maximum power", above: 0, usual: [0.01, 1000] },
    moduleArea: { unit: "m²", symbol: "A", about: "area of the front", above: 0, usual: [0.0001, 5] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [1, 1500] },
  },
  gives: { unit: "1", symbol: "η" },
  expression: "maximumPower / (irradiance * moduleArea)",
  source: [{ in: "Solar cells textbook:2024", clause: "problem 4.2", grade: "copied" }],
  unproven: { because: "no publication found", sought: "edited publications of the notebooks that print it" },
});
