import { formula } from "../../formula/index.js";

/**
 * Maximum-power-point voltage of a string at the inverter, after the drop in its cables. @function
 *
 * @example
 * ```ts
 * import { mppVoltageAtInverter } from "pv-to-grid/string";
 * mppVoltageAtInverter({ modules: 10, mppVoltage: "27.4 V", voltageDrop: "3 %" }).text; // "265.78"
 * ```
 */
export const mppVoltageAtInverter = /* @__PURE__ */ formula({
  id: "string/mpp-voltage-at-inverter",
  about: "maximum-power-point voltage of a string at the inverter, after the drop in its cables",
  takes: {
    modules: { unit: "1", symbol: "n", about: "modules in series", from: 1, usual: [1, 200] },
    mppVoltage: { unit: "V", symbol: "U_MPP", about: "maximum-power-point voltage of one module at the temperature in question", above: 0, usual: [0.5, 200] },
    voltageDrop: { unit: "1", symbol: "ε", about: "share of the voltage that drops in the cables", from: 0, below: 1, usual: [0, 0.1] },
  },
  gives: { unit: "V", symbol: "U_MPP,inv" },
  expression: "modules * mppVoltage * (1 - voltageDrop)",
  source: [{ in: "SEIAPI guideline:2012", clause: "minimum number of modules in a string", grade: "memory" }],
  unproven: { because: "no publication found", sought: "hot string voltages after the drop in their cables; the one found is recalled" },
});

/**
 * Maximum-power-point voltage of a module at the end of its life. @function
 *
 * @example
 * ```ts
 * import { endOfLifeMppVoltage } from "pv-to-grid/string";
 * endOfLifeMppVoltage({ mppVoltage: "28 V", voltageLoss: "5 %" }).text; // "26.6"
 * ```
 */
export const endOfLifeMppVoltage = /* @__PURE__ */ formula({
  id: "string/end-of-life-mpp-voltage",
  about: "maximum-power-point voltage of a module at the end of its life",
  takes: {
    mppVoltage: { unit: "V", symbol: "U_MPP", about: "maximum-power-point voltage of one module when new", above: 0, usual: [0.5, 200] },
    voltageLoss: { unit: "1", symbol: "δ_U", about: "share of the voltage that the module loses over its life", from: 0, below: 1, usual: [0, 0.3] },
  },
  gives: { unit: "V", symbol: "U_MPP,end" },
  expression: "mppVoltage * (1 - voltageLoss)",
  source: [{ in: "common practice", clause: "allowance for ageing", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Lower limit of the maximum-power-point voltage range with a margin. @function
 *
 * @example
 * ```ts
 * import { lowerLimitWithMargin } from "pv-to-grid/string";
 * lowerLimitWithMargin({ lowerMppVoltage: "140 V", windowMargin: "1.1" }).text; // "154"
 * ```
 */
export const lowerLimitWithMargin = /* @__PURE__ */ formula({
  id: "string/lower-limit-with-margin",
  about: "lower limit of the maximum-power-point voltage range with a margin",
  takes: {
    lowerMppVoltage: { unit: "V", symbol: "U_MPP,min", about: "lower limit of the inverter's range", above: 0, usual: [10, 1500] },
    windowMargin: { unit: "1", symbol: "m", about: "margin; 1.1 in Australian practice, 1 for none", from: 1, to: 2, usual: [1, 1.2] },
  },
  gives: { unit: "V", symbol: "m · U_MPP,min" },
  expression: "windowMargin * lowerMppVoltage",
  source: [{ in: "SEIAPI guideline:2012", clause: "minimum number of modules in a string", grade: "memory" }],
  unproven: { because: "no publication found", sought: "sizings with a margin on the tracking range; the one found is recalled" },
});

/**
 * Voltage that is left below a limit. @function
 *
 * @example
 * ```ts
 * import { voltageBelowLimit } from "pv-to-grid/string";
 * voltageBelowLimit({ voltage: "951.2 V", voltageLimit: "1000 V" }).text; // "48.8"
 * ```
 */
export const voltageBelowLimit = /* @__PURE__ */ formula({
  id: "string/voltage-below-limit",
  about: "voltage that is left below a limit",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage of the string", from: 0, usual: [0, 1500] },
    voltageLimit: { unit: "V", symbol: "U_lim", about: "limit", from: 0, usual: [0, 1500] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "voltageLimit - voltage",
  source: [{ in: "common practice", clause: "margin to a limit", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Voltage that is left above a limit. @function
 *
 * @example
 * ```ts
 * import { voltageAboveLimit } from "pv-to-grid/string";
 * voltageAboveLimit({ voltage: "260 V", voltageLimit: "200 V" }).text; // "60"
 * ```
 */
export const voltageAboveLimit = /* @__PURE__ */ formula({
  id: "string/voltage-above-limit",
  about: "voltage that is left above a limit",
  takes: {
    voltage: { unit: "V", symbol: "U", about: "voltage of the string", from: 0, usual: [0, 1500] },
    voltageLimit: { unit: "V", symbol: "U_lim", about: "limit", from: 0, usual: [0, 1500] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "voltage - voltageLimit",
  source: [{ in: "common practice", clause: "margin to a limit", grade: "common-practice" }],
  unproven: { because: "definition" },
});
