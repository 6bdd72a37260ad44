import { condition } from "../../formula/index.js";

/** Does the string stay within the inverter's tracking range when it is cold? @function */
export const coldMppVoltageWithinRange = /* @__PURE__ */ condition({
  id: "string/cold-mpp-voltage-within-range",
  asks: "Does the string stay within the inverter's tracking range when it is cold?",
  force: "yield",
  value: { unit: "V", symbol: "U_MPP,cold", about: "maximum-power-point voltage of the string at the lowest operating temperature" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_MPP,max", about: "upper limit of the tracking range" },
  source: [
    { in: "GuidEnR course:2011", clause: "step 2, number of modules in series", grade: "original" },
  ],
  worse: { "strings[].modules": "up", "inverters[].mppVoltageRange": "either" },
  note: "a yield limit: above it the inverter leaves the maximum power point, nothing is harmed",
});

/** Does the string stay within the inverter's tracking range when it is hot? @function */
export const hotMppVoltageWithinRange = /* @__PURE__ */ condition({
  id: "string/hot-mpp-voltage-within-range",
  asks: "Does the string stay within the inverter's tracking range when it is hot?",
  force: "yield",
  value: { unit: "V", symbol: "U_MPP,hot", about: "maximum-power-point voltage of the string at the inverter, hot, after the drop in its cables" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_MPP,min", about: "lower limit of the tracking range, with its margin" },
  source: [
    { in: "GuidEnR course:2011", clause: "step 2, number of modules in series", grade: "original" },
    { in: "SEIAPI guideline:2012", clause: "minimum number of modules in a string", grade: "memory" },
  ],
  worse: { "strings[].modules": "down", "site.hottest": "up", "moduleTypes[].mppVoltage": "down", "inverters[].mppVoltageRange": "either" },
  note: "a yield limit",
});

/** Does the string stay within the inverter's tracking range when it is hot and old? @function */
export const endOfLifeMppVoltageWithinRange = /* @__PURE__ */ condition({
  id: "string/end-of-life-mpp-voltage-within-range",
  asks: "Does the string stay within the inverter's tracking range when it is hot and old?",
  force: "yield",
  value: { unit: "V", symbol: "U_MPP,end", about: "maximum-power-point voltage of the string at the inverter, hot, at the end of its life" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_MPP,min", about: "lower limit of the tracking range, with its margin" },
  source: [
    { in: "common practice", clause: "allowance for ageing", grade: "common-practice" },
  ],
  worse: { "strings[].modules": "down" },
  note: "a yield limit",
});

/** Does the string reach the inverter's start voltage when it is hot? @function */
export const hotVoltageReachesStart = /* @__PURE__ */ condition({
  id: "string/hot-voltage-reaches-start",
  asks: "Does the string reach the inverter's start voltage when it is hot?",
  force: "yield",
  value: { unit: "V", symbol: "U_OC,hot", about: "open-circuit voltage of the string, hot" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_start", about: "start voltage of the inverter" },
  source: [
    { in: "common practice", clause: "start on a hot day", grade: "common-practice" },
  ],
  worse: { "strings[].modules": "down", "inverters[].startVoltage": "up", "site.hottest": "up" },
  note: "a yield limit: below it the inverter waits for a cooler hour",
});
