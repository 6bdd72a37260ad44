import { formula } from "../../formula/index.js";

/**
 * Current of continuous duty, 125 % of the maximum current. @function
 *
 * @example
 * ```ts
 * import { continuousCurrent } from "pv-to-grid/string";
 * continuousCurrent({ maximumCurrent: "11 A" }).text; // "13.75"
 * ```
 */
export const continuousCurrent = /* @__PURE__ */ formula({
  id: "string/continuous-current",
  about: "current of continuous duty, 125 % of the maximum current",
  takes: { maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current of the circuit", from: 0, usual: [0.1, 5000] } },
  constants: {
    continuous: {
      value: "1.25", unit: "1", symbol: "125 %", about: "allowance for continuous duty",
      source: [
        { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
        { in: "NFPA 70:2020", clause: "690.8(B)(1) and 690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B) and 690.9(B)" },
      ],
    },
  },
  gives: { unit: "A", symbol: "1.25 I_max" },
  expression: "continuous * maximumCurrent",
  source: [
    { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
    { in: "NFPA 70:2020", clause: "690.8(B)(1) and 690.9(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B) and 690.9(B)" },
  ],
});
