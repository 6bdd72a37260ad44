import { formula } from "../../formula/index.js";

/**
 * Fill factor: maximum power over the product of open-circuit voltage and short-circuit current.
 *
 * @function
 * @example
 * ```ts
 * import { fillFactor } from "pv-to-grid/module";
 * fillFactor({ maximumPower: "440 W", openCircuitVoltage: "39.2 V", shortCircuitCurrent: "14.1 A" }).show(); // "0.7961"
 * ```
 */
export const fillFactor = /* @__PURE__ */ formula({
  id: "module/fill-factor",
  about: "fill factor: maximum power over the product of open-circuit voltage and short-circuit current",
  takes: {
    maximumPower: { unit: "W", symbol: "P_max", about: "maximum power", above: 0, usual: [1, 1000] },
    openCircuitVoltage: { unit: "V", symbol: "U_OC", about: "open-circuit voltage", above: 0, usual: [0.3, 200] },
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current", above: 0, usual: [0.05, 40] },
  },
  gives: { unit: "1", symbol: "FF" },
  expression: "maximumPower / (openCircuitVoltage * shortCircuitCurrent)",
  source: [{ in: "PVEducation:undated", clause: "fill factor", grade: "original" }],
  unproven: { because: "no publication found", sought: "worked fill factors in edited publications with every input printed" },
});
