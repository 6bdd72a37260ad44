import { table } from "../../../formula/index.js";

/**
 * Voltage at which a unit of IEEE 1547:2018 is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_voltageTrip } from "pv-to-grid/grid";
 * ieee1547_2018_voltageTrip({ setting: "overvoltage2", category: "I", value: "setting" }).text; // "1.2"
 * ```
 */
export const ieee1547_2018_voltageTrip = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-voltage-trip",
  about: "voltage at which a unit of IEEE 1547:2018 is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], value: ["setting", "lowest", "highest"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11, 12 and 13", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
  cells: `
    overvoltage2   1.20  1.20  1.20  1.20  1.20  1.20  1.20  1.20  1.20
    overvoltage1   1.10  1.10  1.20  1.10  1.10  1.20  1.10  1.10  1.20
    undervoltage1  0.70  0.0   0.88  0.70  0.0   0.88  0.88  0.0   0.88
    undervoltage2  0.45  0.0   0.50  0.45  0.0   0.50  0.50  0.0   0.50
  `,
  note: "abnormal operating category; overvoltage 2 is fixed",
});

/**
 * Longest clearing time of the voltage trips of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_voltageTripTime } from "pv-to-grid/grid";
 * ieee1547_2018_voltageTripTime({ setting: "overvoltage2", category: "I", time: "clearing" }).text; // "0.16"
 * ```
 */
export const ieee1547_2018_voltageTripTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-voltage-trip-time",
  about: "longest clearing time of the voltage trips of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], time: ["clearing", "shortest", "longest"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11, 12 and 13", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
  cells: `
    overvoltage2   0.16  0.16  0.16  0.16  0.16  0.16  0.16  0.16  0.16
    overvoltage1   2.0   1.0   13.0  2.0   1.0   13.0  13.0  1.0   13.0
    undervoltage1  2.0   2.0   21.0  10.0  2.0   21.0  21.0  21.0  50.0
    undervoltage2  0.16  0.16  2.0   0.16  0.16  2.0   2.0   2.0   21.0
  `,
  note: "clearing: the longest time to the end of energising",
});

/**
 * Frequency at which a unit of IEEE 1547:2018 is to trip.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_frequencyTrip } from "pv-to-grid/grid";
 * ieee1547_2018_frequencyTrip({ setting: "overfrequency2", value: "setting" }).text; // "62"
 * ```
 */
export const ieee1547_2018_frequencyTrip = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-frequency-trip",
  about: "frequency at which a unit of IEEE 1547:2018 is to trip",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "IEEE 1547:2018", clause: "table 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
  cells: `
    overfrequency2   62.0  61.8  66.0
    overfrequency1   61.2  61.0  66.0
    underfrequency1  58.5  50.0  59.0
    underfrequency2  56.5  50.0  57.0
  `,
});

/**
 * Longest clearing time of the frequency trips of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_frequencyTripTime } from "pv-to-grid/grid";
 * ieee1547_2018_frequencyTripTime({ setting: "overfrequency2", time: "clearing" }).text; // "0.16"
 * ```
 */
export const ieee1547_2018_frequencyTripTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-frequency-trip-time",
  about: "longest clearing time of the frequency trips of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { time: ["clearing", "shortest", "longest"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547:2018", clause: "table 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
  cells: `
    overfrequency2   0.16  0.16  1000
    overfrequency1   300   180   1000
    underfrequency1  300   180   1000
    underfrequency2  0.16  0.16  1000
  `,
});

/**
 * Rate of change of frequency that a unit of IEEE 1547:2018 is to ride through.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_rateOfChangeOfFrequency } from "pv-to-grid/grid";
 * ieee1547_2018_rateOfChangeOfFrequency({ setting: "rideThroughRate", category: "I", value: "setting" }).text; // "0.5"
 * ```
 */
export const ieee1547_2018_rateOfChangeOfFrequency = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-rate-of-change-of-frequency",
  about: "rate of change of frequency that a unit of IEEE 1547:2018 is to ride through",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], value: ["setting"] },
  gives: { unit: "Hz/s", symbol: "df/dt" },
  source: [{ in: "IEEE 1547:2018", clause: "table 21", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
  cells: `
    rideThroughRate  0.5  2.0  3.0
  `,
});

/**
 * Voltage window for entering service of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_enterServiceVoltage } from "pv-to-grid/grid";
 * ieee1547_2018_enterServiceVoltage({ setting: "reconnectionVoltageLow", value: "setting" }).text; // "0.917"
 * ```
 */
export const ieee1547_2018_enterServiceVoltage = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-enter-service-voltage",
  about: "voltage window for entering service of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "p.u.", symbol: "U" },
  source: [{ in: "IEEE 1547:2018", clause: "table 4", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService, table 11 of IEEE 1547.1" }],
  cellGrades: { memory: ["reconnectionVoltageLow | lowest", "reconnectionVoltageLow | highest", "reconnectionVoltageHigh | lowest", "reconnectionVoltageHigh | highest"] },
  cells: `
    reconnectionVoltageLow   0.917  0.88  0.95
    reconnectionVoltageHigh  1.05   1.05  1.06
  `,
  note: "the ranges are recalled; the test cases of IEEE 1547.1 use these ends",
});

/**
 * Frequency window for entering service of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_enterServiceFrequency } from "pv-to-grid/grid";
 * ieee1547_2018_enterServiceFrequency({ setting: "reconnectionFrequencyLow", value: "setting" }).text; // "59.5"
 * ```
 */
export const ieee1547_2018_enterServiceFrequency = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-enter-service-frequency",
  about: "frequency window for entering service of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "Hz", symbol: "f" },
  source: [{ in: "IEEE 1547:2018", clause: "table 4", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService, table 11 of IEEE 1547.1" }],
  cellGrades: { memory: ["reconnectionFrequencyLow | lowest", "reconnectionFrequencyLow | highest", "reconnectionFrequencyHigh | lowest", "reconnectionFrequencyHigh | highest"] },
  cells: `
    reconnectionFrequencyLow   59.5  59.0  59.9
    reconnectionFrequencyHigh  60.1  60.1  61.0
  `,
  note: "the ranges are recalled; the test cases of IEEE 1547.1 use these ends",
});

/**
 * Delay and ramp for entering service of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_enterServiceTime } from "pv-to-grid/grid";
 * ieee1547_2018_enterServiceTime({ setting: "reconnectionTime", value: "setting" }).text; // "300"
 * ```
 */
export const ieee1547_2018_enterServiceTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-enter-service-time",
  about: "delay and ramp for entering service of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { value: ["setting", "lowest", "highest"] },
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547:2018", clause: "table 4", grade: "copied", seen: "UL1741SB test scripts:2026, EnterService, table 11 of IEEE 1547.1" }],
  cellGrades: { memory: ["reconnectionTime | lowest", "reconnectionTime | highest", "rampTime | lowest", "rampTime | highest"] },
  cells: `
    reconnectionTime  300  0  600
    rampTime          300  1  1000
  `,
  note: "the ranges are recalled; the test cases of IEEE 1547.1 use these ends",
});
