import { formula } from "../../formula/index.js";

/**
 * Share by which the stated maximum power differs from the product of its voltage and current.
 *
 * @function
 * @example
 * ```ts
 * import { powerDeviation } from "pv-to-grid/module";
 * powerDeviation({ maximumPower: "440 W", mppVoltage: "32.8 V", mppCurrent: "13.42 A" }).show(); // "0.0004"
 * ```
 */
export const powerDeviation = /* @__PURE__ */ formula({
  id: "module/power-deviation",
  about: "share by which the stated maximum power differs from the product of its voltage and current",
  takes: {
    maximumPower: { unit: "W", symbol: "P_max", about: "maximum power", above: 0, usual: [1, 1000] },
    mppVoltage: { unit: "V", symbol: "U_MPP", about: "voltage at the maximum power point", above: 0, usual: [0.3, 180] },
    mppCurrent: { unit: "A", symbol: "I_MPP", about: "current at the maximum power point", above: 0, usual: [0.05, 40] },
  },
  gives: { unit: "1", symbol: "δ_P" },
  expression: "abs(maximumPower - mppVoltage * mppCurrent) / maximumPower",
  source: [{ in: "common practice", clause: "the maximum power is the product of its voltage and current", grade: "common-practice" }],
  unproven: { because: "definition" },
});
