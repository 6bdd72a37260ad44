import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage on the straight line between two measured points.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageBetween } from "pv-to-grid/module";
 * openCircuitVoltageBetween({ voltageBefore: "0.9424 V", currentBefore: "0.0050547 A", voltageAfter: "0.9442 V", currentAfter: "-0.0031112 A" }).show(); // "0.9435 V"
 * ```
 */
export const openCircuitVoltageBetween = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-between",
  about: "open-circuit voltage on the straight line between two measured points",
  takes: {
    voltageBefore: { unit: "V", symbol: "U_1", about: "voltage of the point before", above: -1000, to: 3000, usual: [-1000, 1500] },
    currentBefore: { unit: "A", symbol: "I_1", about: "current of the point before", above: -1000, to: 1000, usual: [-1000, 1000] },
    voltageAfter: { unit: "V", symbol: "U_2", about: "voltage of the point after", above: -1000, to: 3000, usual: [-1000, 1500] },
    currentAfter: { unit: "A", symbol: "I_2", about: "current of the point after", above: -1000, to: 1000, usual: [-1000, 1000] },
  },
  requires: [{ that: "currentBefore != currentAfter", because: "the two points must differ in current" }],
  gives: { unit: "V", symbol: "U_OC" },
  expression: "voltageBefore - currentBefore * (voltageAfter - voltageBefore) / (currentAfter - currentBefore)",
  source: [{ in: "Solar cells textbook:2024", clause: "problem 12.3", grade: "copied" }],
  unproven: { because: "no publication found", sought: "edited publications of the notebooks that print it" },
});
