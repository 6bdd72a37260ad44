import { formula } from "../../formula/index.js";

/**
 * Current of equal strings in parallel. @function
 *
 * @example
 * ```ts
 * import { parallelCurrent } from "pv-to-grid/string";
 * parallelCurrent({ strings: 2, current: "5.02 A" }).text; // "10.04"
 * ```
 */
export const parallelCurrent = /* @__PURE__ */ formula({
  id: "string/parallel-current",
  about: "current of equal strings in parallel",
  takes: {
    strings: { unit: "1", symbol: "N", about: "strings in parallel", from: 0, usual: [1, 500] },
    current: { unit: "A", symbol: "I", about: "current of one string", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_par" },
  expression: "strings * current",
  source: [
    { in: "Greencredential questions:undated", clause: "question 4", grade: "original" },
    { in: "IEC 62548-1:2023", clause: "current of the array", grade: "memory" },
  ],
});

/**
 * Current of unlike groups of strings in parallel. @function
 *
 * @example
 * ```ts
 * import { summedCurrent } from "pv-to-grid/string";
 * summedCurrent({ currents: ["13.4 A", "13.1 A"] }).text; // "26.5"
 * ```
 */
export const summedCurrent = /* @__PURE__ */ formula({
  id: "string/summed-current",
  about: "current of unlike groups of strings in parallel",
  takes: { currents: { each: "A", symbol: "I_i", about: "current of each group", from: 0, usual: [0, 1000] } },
  gives: { unit: "A", symbol: "ΣI" },
  expression: "sum(currents)",
  source: [{ in: "NFPA 70:2020", clause: "690.8(A)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)" }],
  unproven: { because: "composition only" },
});
