import { condition } from "../../formula/index.js";

/**
 * Is the system voltage below the step of the 500 V test? @function
 *
 * @example
 * ```ts
 * import { belowMiddleStep } from "pv-to-grid/commissioning";
 * belowMiddleStep({ value: "119 V", limit: "120 V" }).verdict; // "met"
 * ```
 */
export const belowMiddleStep = /* @__PURE__ */ condition({
  id: "commissioning/below-middle-step",
  asks: "Is the system voltage below the step of the 500 V test?",
  force: "yield",
  value: { unit: "V", symbol: "U_sys", about: "system voltage" },
  relation: "<",
  limit: { unit: "V", symbol: "U_sys", about: "step of the 500 V test" },
  source: [{ in: "IEC 62446:2009", clause: "5.4.7", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.7" }],
});

/**
 * Is the system voltage within reach of the 1000 V test? @function
 *
 * @example
 * ```ts
 * import { withinKilovoltTest } from "pv-to-grid/commissioning";
 * withinKilovoltTest({ value: "1000 V", limit: "1000 V" }).verdict; // "met"
 * ```
 */
export const withinKilovoltTest = /* @__PURE__ */ condition({
  id: "commissioning/within-kilovolt-test",
  asks: "Is the system voltage within reach of the 1000 V test?",
  force: "yield",
  value: { unit: "V", symbol: "U_sys", about: "system voltage" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_sys", about: "step of the 1000 V test" },
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
});

/**
 * Is the section small enough to be tested at once? @function
 *
 * @example
 * ```ts
 * import { sectionSmallEnough } from "pv-to-grid/commissioning";
 * sectionSmallEnough({ value: "8 kW", limit: "10 kW" }).verdict; // "met"
 * ```
 */
export const sectionSmallEnough = /* @__PURE__ */ condition({
  id: "commissioning/section-small-enough",
  asks: "Is the section small enough to be tested at once?",
  force: "recommendation",
  value: { unit: "kW", symbol: "P_S", about: "power of the section" },
  relation: "≤",
  limit: { unit: "kW", symbol: "P_S,max", about: "power up to which an array is one section" },
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }],
});

/**
 * Do all parts under test bear the test voltage? @function
 *
 * @example
 * ```ts
 * import { testVoltageBearable } from "pv-to-grid/commissioning";
 * testVoltageBearable({ value: "1000 V", limit: "1000 V" }).verdict; // "met"
 * ```
 */
export const testVoltageBearable = /* @__PURE__ */ condition({
  id: "commissioning/test-voltage-bearable",
  asks: "Do all parts under test bear the test voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_test", about: "voltage of the insulation test" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_max", about: "lowest rated voltage among modules, plugs and cables under test" },
  source: [{ in: "common practice", clause: "a test must not exceed the rating of what is tested", grade: "common-practice" }],
  note: "surge protective devices and the inverter are disconnected first",
});

/**
 * Is the insulation resistance of the array high enough? @function
 *
 * @example
 * ```ts
 * import { insulationHighEnough } from "pv-to-grid/commissioning";
 * insulationHighEnough({ value: "2.4 MΩ", limit: "1 MΩ" }).verdict; // "met"
 * ```
 */
export const insulationHighEnough = /* @__PURE__ */ condition({
  id: "commissioning/insulation-high-enough",
  asks: "Is the insulation resistance of the array high enough?",
  force: "requirement",
  value: { unit: "MΩ", symbol: "R_iso", about: "measured insulation resistance" },
  relation: "≥",
  limit: { unit: "MΩ", symbol: "R_iso,min", about: "least insulation resistance" },
  source: [{ in: "IEC 62446-1:2016", clause: "6.7", grade: "memory" }, { in: "IEC 61557-2:undated", clause: "least insulation resistance", grade: "reproduced", seen: "HT PV tester manual:undated, p. 23" }],
});

/**
 * Is the insulation resistance of the a.c. circuit high enough? @function
 *
 * @example
 * ```ts
 * import { acInsulationHighEnough } from "pv-to-grid/commissioning";
 * acInsulationHighEnough({ value: "0.8 MΩ", limit: "1 MΩ" }).verdict; // "not met"
 * ```
 */
export const acInsulationHighEnough = /* @__PURE__ */ condition({
  id: "commissioning/ac-insulation-high-enough",
  asks: "Is the insulation resistance of the a.c. circuit high enough?",
  force: "requirement",
  value: { unit: "MΩ", symbol: "R_iso", about: "measured insulation resistance" },
  relation: "≥",
  limit: { unit: "MΩ", symbol: "R_iso,min", about: "least insulation resistance" },
  source: [{ in: "IEC 60364-6:2016", clause: "table 6.1", grade: "reproduced", seen: "Bane NOR technical rules:undated, table" }],
});
