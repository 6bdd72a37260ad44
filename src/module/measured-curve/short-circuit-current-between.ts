import { formula } from "../../formula/index.js";

/**
 * Short-circuit current on the straight line between two measured points.
 *
 * @function
 * @example
 * ```ts
 * import { shortCircuitCurrentBetween } from "pv-to-grid/module";
 * shortCircuitCurrentBetween({ voltageBefore: "-0.0329 V", currentBefore: "0.225522 A", voltageAfter: "0.01161 V", currentAfter: "0.2254902 A" }).show(); // "0.2255 A"
 * ```
 */
export const shortCircuitCurrentBetween = /* @__PURE__ */ formula({
  id: "module/short-circuit-current-between",
  about: "short-circuit current on the straight line between two measured points",
  takes: {
    voltageBefore: { unit: "V", symbol: "U_1", about: "voltage of the point before", above: -1000, to: 3000, usual: [-1000, 1500] },
    currentBefore: { unit: "A", symbol: "I_1", about: "current of the point before", above: -1000, to: 1000, usual: [-1000, 1000] },
    voltageAfter: { unit: "V", symbol: "U_2", about: "voltage of the point after", above: -1000, to: 3000, usual: [-1000, 1500] },
    currentAfter: { unit: "A", symbol: "I_2", about: "current of the point after", above: -1000, to: 1000, usual: [-1000, 1000] },
  },
  requires: [{ that: "voltageBefore != voltageAfter", because: "the two points must differ in voltage" }],
  gives: { unit: "A", symbol: "I_SC" },
  expression: "currentBefore - voltageBefore * (currentAfter - currentBefore) / (voltageAfter - voltageBefore)",
  source: [{ in: "Solar cells textbook:2024", clause: "problem 12.3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "edited publications of the notebooks that print it" },
});
