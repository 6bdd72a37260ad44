import { condition } from "../../formula/index.js";

/**
 * Is the voltage setting at least the lowest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { voltageSettingNotBelowRange } from "pv-to-grid/grid";
 * voltageSettingNotBelowRange({ value: "264 V", limit: "264 V" }).verdict; // "met"
 * ```
 */
export const voltageSettingNotBelowRange = /* @__PURE__ */ condition({
  id: "grid/voltage-setting-not-below-range",
  asks: "Is the voltage setting at least the lowest that the rules allow?",
  force: "requirement",
  value: { unit: "V", symbol: "U_set", about: "setting as entered" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_low", about: "lowest allowed setting" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11, 12 and 13", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the voltage setting at most the highest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { voltageSettingNotAboveRange } from "pv-to-grid/grid";
 * voltageSettingNotAboveRange({ value: "288.1 V", limit: "288 V" }).verdict; // "not met"
 * ```
 */
export const voltageSettingNotAboveRange = /* @__PURE__ */ condition({
  id: "grid/voltage-setting-not-above-range",
  asks: "Is the voltage setting at most the highest that the rules allow?",
  force: "requirement",
  value: { unit: "V", symbol: "U_set", about: "setting as entered" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_high", about: "highest allowed setting" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11, 12 and 13", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the voltage setting that of the rules?
 *
 * @function
 * @example
 * ```ts
 * import { voltageSettingAsInTheRules } from "pv-to-grid/grid";
 * voltageSettingAsInTheRules({ value: "262 V", limit: "262.2 V" }).verdict; // "not met"
 * ```
 */
export const voltageSettingAsInTheRules = /* @__PURE__ */ condition({
  id: "grid/voltage-setting-as-in-the-rules",
  asks: "Is the voltage setting that of the rules?",
  force: "recommendation",
  value: { unit: "V", symbol: "U_set", about: "setting as entered" },
  relation: "=",
  limit: { unit: "V", symbol: "U_rule", about: "setting of the rules" },
  source: [{ in: "common practice", clause: "the network operator's settings are entered unchanged", grade: "common-practice" }],
});

/**
 * Is the frequency setting at least the lowest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { frequencySettingNotBelowRange } from "pv-to-grid/grid";
 * frequencySettingNotBelowRange({ value: "61 Hz", limit: "61 Hz" }).verdict; // "met"
 * ```
 */
export const frequencySettingNotBelowRange = /* @__PURE__ */ condition({
  id: "grid/frequency-setting-not-below-range",
  asks: "Is the frequency setting at least the lowest that the rules allow?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f_set", about: "setting as entered" },
  relation: "≥",
  limit: { unit: "Hz", symbol: "f_low", about: "lowest allowed setting" },
  source: [{ in: "IEEE 1547:2018", clause: "table 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the frequency setting at most the highest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { frequencySettingNotAboveRange } from "pv-to-grid/grid";
 * frequencySettingNotAboveRange({ value: "66.1 Hz", limit: "66 Hz" }).verdict; // "not met"
 * ```
 */
export const frequencySettingNotAboveRange = /* @__PURE__ */ condition({
  id: "grid/frequency-setting-not-above-range",
  asks: "Is the frequency setting at most the highest that the rules allow?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f_set", about: "setting as entered" },
  relation: "≤",
  limit: { unit: "Hz", symbol: "f_high", about: "highest allowed setting" },
  source: [{ in: "IEEE 1547:2018", clause: "table 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the frequency setting that of the rules?
 *
 * @function
 * @example
 * ```ts
 * import { frequencySettingAsInTheRules } from "pv-to-grid/grid";
 * frequencySettingAsInTheRules({ value: "51.5 Hz", limit: "51.5 Hz" }).verdict; // "met"
 * ```
 */
export const frequencySettingAsInTheRules = /* @__PURE__ */ condition({
  id: "grid/frequency-setting-as-in-the-rules",
  asks: "Is the frequency setting that of the rules?",
  force: "recommendation",
  value: { unit: "Hz", symbol: "f_set", about: "setting as entered" },
  relation: "=",
  limit: { unit: "Hz", symbol: "f_rule", about: "setting of the rules" },
  source: [{ in: "common practice", clause: "the network operator's settings are entered unchanged", grade: "common-practice" }],
});

/**
 * Is the time at least the shortest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { settingTimeNotBelowRange } from "pv-to-grid/grid";
 * settingTimeNotBelowRange({ value: "20 s", limit: "21 s" }).verdict; // "not met"
 * ```
 */
export const settingTimeNotBelowRange = /* @__PURE__ */ condition({
  id: "grid/setting-time-not-below-range",
  asks: "Is the time at least the shortest that the rules allow?",
  force: "requirement",
  value: { unit: "s", symbol: "t_set", about: "time as entered" },
  relation: "≥",
  limit: { unit: "s", symbol: "t_short", about: "shortest allowed time" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11 to 13 and 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the time at most the longest that the rules allow?
 *
 * @function
 * @example
 * ```ts
 * import { settingTimeNotAboveRange } from "pv-to-grid/grid";
 * settingTimeNotAboveRange({ value: "13 s", limit: "13 s" }).verdict; // "met"
 * ```
 */
export const settingTimeNotAboveRange = /* @__PURE__ */ condition({
  id: "grid/setting-time-not-above-range",
  asks: "Is the time at most the longest that the rules allow?",
  force: "requirement",
  value: { unit: "s", symbol: "t_set", about: "time as entered" },
  relation: "≤",
  limit: { unit: "s", symbol: "t_long", about: "longest allowed time" },
  source: [{ in: "IEEE 1547:2018", clause: "tables 11 to 13 and 18", grade: "copied", seen: "UL1741SB test scripts:2026, eut.py" }],
});

/**
 * Is the time that of the rules?
 *
 * @function
 * @example
 * ```ts
 * import { settingTimeAsInTheRules } from "pv-to-grid/grid";
 * settingTimeAsInTheRules({ value: "2 s", limit: "2 s" }).verdict; // "met"
 * ```
 */
export const settingTimeAsInTheRules = /* @__PURE__ */ condition({
  id: "grid/setting-time-as-in-the-rules",
  asks: "Is the time that of the rules?",
  force: "recommendation",
  value: { unit: "s", symbol: "t_set", about: "time as entered" },
  relation: "=",
  limit: { unit: "s", symbol: "t_rule", about: "time of the rules" },
  source: [{ in: "common practice", clause: "the network operator's settings are entered unchanged", grade: "common-practice" }],
});
