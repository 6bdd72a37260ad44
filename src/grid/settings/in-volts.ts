import { formula } from "../../formula/index.js";

/**
 * Voltage of a setting that is given as a share of the nominal voltage.
 *
 * @function
 * @example
 * ```ts
 * import { settingInVolts } from "pv-to-grid/grid";
 * settingInVolts({ settingShare: "1.14", nominalVoltage: "230 V" }).text; // "262.2"
 * ```
 */
export const settingInVolts = /* @__PURE__ */ formula({
  id: "grid/setting-in-volts",
  about: "voltage of a setting that is given as a share of the nominal voltage",
  takes: {
    settingShare: { unit: "p.u.", symbol: "u", about: "setting as a share of the nominal voltage", from: 0, usual: [0, 2] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "V", symbol: "U_set" },
  expression: "settingShare * nominalVoltage",
  source: [
    { in: "Autoconsommation guide:undated", clause: "list item 1, 264.5 V", grade: "original" },
    { in: "Valea on overvoltage:2019", clause: "body, 253 V (230 V + 10 %)", grade: "original" },
  ],
});

/**
 * Line-to-line voltage that belongs to a setting between line and neutral.
 *
 * @function
 * @example
 * ```ts
 * import { lineVoltageOfSetting } from "pv-to-grid/grid";
 * lineVoltageOfSetting({ phaseVoltage: "253 V", lineToNeutral: "230 V", lineToLine: "400 V" }).text; // "440"
 * ```
 */
export const lineVoltageOfSetting = /* @__PURE__ */ formula({
  id: "grid/line-voltage-of-setting",
  about: "line-to-line voltage that belongs to a setting between line and neutral",
  takes: {
    phaseVoltage: { unit: "V", symbol: "U_LN", about: "setting between line and neutral", from: 0, usual: [0, 1000] },
    lineToNeutral: { unit: "V", symbol: "U_n,LN", about: "nominal voltage between line and neutral", above: 0, usual: [50, 1000] },
    lineToLine: { unit: "V", symbol: "U_n,LL", about: "nominal voltage between two lines", above: 0, usual: [50, 1000] },
  },
  gives: { unit: "V", symbol: "U_LL" },
  expression: "phaseVoltage * lineToLine / lineToNeutral",
  source: [{ in: "common practice", clause: "the same share of the nominal voltage", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Frequency of a setting that is given as a deviation from the nominal frequency.
 *
 * @function
 * @example
 * ```ts
 * import { frequencyOfDeviation } from "pv-to-grid/grid";
 * frequencyOfDeviation({ nominalFrequency: "50 Hz", deviation: "-1 Hz" }).text; // "49"
 * ```
 */
export const frequencyOfDeviation = /* @__PURE__ */ formula({
  id: "grid/frequency-of-deviation",
  about: "frequency of a setting that is given as a deviation from the nominal frequency",
  takes: {
    nominalFrequency: { unit: "Hz", symbol: "f_n", about: "nominal frequency", above: 0, usual: [50, 60] },
    deviation: { unit: "Hz", symbol: "Δf", about: "deviation, negative below", usual: [-10, 10] },
  },
  gives: { unit: "Hz", symbol: "f_set" },
  expression: "nominalFrequency + deviation",
  source: [{ in: "IEC 61727:2004", clause: "5.2.2", grade: "memory" }],
  unproven: { because: "definition" },
});
