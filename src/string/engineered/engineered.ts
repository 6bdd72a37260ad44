import { condition, formula } from "../../formula/index.js";

/**
 * Generating capacity from which the NEC accepts an engineered design. @function
 *
 * @example
 * ```ts
 * import { engineeringCapacity } from "pv-to-grid/string";
 * engineeringCapacity({}).text; // "100"
 * ```
 */
export const engineeringCapacity = /* @__PURE__ */ formula({
  id: "string/engineering-capacity",
  about: "generating capacity from which the NEC accepts an engineered design",
  takes: {},
  constants: {
    capacity: {
      value: "100", unit: "kW", symbol: "100 kW", about: "inverter generating capacity",
      source: [{ in: "NFPA 70:2020", clause: "690.7(A)(3) and 690.8(A)(1)(a)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.7(A)" }],
    },
  },
  gives: { unit: "kW", symbol: "P_eng" },
  expression: "capacity",
  source: [{ in: "NFPA 70:2020", clause: "690.7(A)(3) and 690.8(A)(1)(a)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.7(A)" }],
  unproven: { because: "definition" },
});

/**
 * Engineered maximum current: the highest three-hour average, never below its floor. @function
 *
 * @example
 * ```ts
 * import { engineeredCurrent } from "pv-to-grid/string";
 * engineeredCurrent({ averageCurrent: "150 A", maximumCurrent: "200 A" }).text; // "150"
 * engineeredCurrent({ averageCurrent: "120 A", maximumCurrent: "200 A" }).text; // "140"
 * ```
 */
export const engineeredCurrent = /* @__PURE__ */ formula({
  id: "string/engineered-current",
  about: "engineered maximum current: the highest three-hour average, never below its floor",
  takes: {
    averageCurrent: { unit: "A", symbol: "I_3h", about: "highest three-hour average of the simulated current", above: 0, usual: [1, 5000] },
    maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current without engineering, 125 % of the short-circuit current", above: 0, usual: [1, 5000] },
  },
  constants: {
    floorShare: {
      value: "0.7", unit: "1", symbol: "70 %", about: "share of the maximum current below which the engineered one must not fall",
      source: [
        { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)(2)" },
        { in: "NFPA 70:2026", clause: "690.8(A)(1)(a)(3)", grade: "reproduced", seen: "Solar Tech Collective:2025" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_eng" },
  expression: "max(averageCurrent, floorShare * maximumCurrent)",
  source: [
    { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)(2)" },
    { in: "NFPA 70:2026", clause: "690.8(A)(1)(a)(3)", grade: "reproduced", seen: "Solar Tech Collective:2025" },
  ],
  unproven: { because: "no publication found", sought: "690.8(A) three-hour average 70 percent floor worked example" },
});

/** Is the plant large enough for an engineered design? @function */
export const largeEnoughForEngineering = /* @__PURE__ */ condition({
  id: "string/large-enough-for-engineering",
  asks: "Is the plant large enough for an engineered design?",
  force: "requirement",
  value: { unit: "kW", symbol: "P_AC", about: "generating capacity of the inverters" },
  relation: "≥",
  limit: { unit: "kW", symbol: "P_eng", about: "capacity from which it is accepted" },
  source: [{ in: "NFPA 70:2020", clause: "690.7(A)(3) and 690.8(A)(1)(a)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.7(A)" }],
});

/** Is the engineered design documented and stamped by a licensed engineer? @function */
export const engineeredDesignStamped = /* @__PURE__ */ condition({
  id: "string/engineered-design-stamped",
  asks: "Is the engineered design documented and stamped by a licensed engineer?",
  force: "requirement",
  value: { named: true, about: "state of the design" },
  relation: "one of",
  limit: { named: true, about: "states that serve" },
  source: [
    { in: "NFPA 70:2020", clause: "690.7(A)(3)", grade: "copied", seen: "California Electrical Code:2022, 690.7(A)" },
    { in: "NFPA 70:2026", clause: "690.8(A)(1)(a)(3)", grade: "reproduced", seen: "Solar Tech Collective:2025" },
  ],
});
