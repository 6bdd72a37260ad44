import { formula } from "../../formula/index.js";

/**
 * Maximum current of a string or source circuit. @function
 *
 * @example
 * ```ts
 * import { maximumCurrent } from "pv-to-grid/string";
 * maximumCurrent({ shortCircuitCurrent: "11.49 A" }).text; // "14.3625"
 * ```
 */
export const maximumCurrent = /* @__PURE__ */ formula({
  id: "string/maximum-current",
  about: "maximum current of a string or source circuit",
  takes: {
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current at standard test conditions, of one string or the sum of parallel ones", from: 0, usual: [0.1, 1000] },
  },
  constants: {
    irradianceFactor: {
      value: "1.25", unit: "1", symbol: "1.25", about: "allowance for irradiance above that of the standard test conditions",
      source: [
        { in: "AS/NZS 5033:2021", clause: "4.2.2", grade: "reproduced", seen: "RFI article on AS/NZS 5033:undated, example" },
        { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)" },
        { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_max" },
  expression: "irradianceFactor * shortCircuitCurrent",
  source: [
    { in: "AS/NZS 5033:2021", clause: "4.2.2", grade: "reproduced", seen: "RFI article on AS/NZS 5033:undated, example" },
    { in: "NFPA 70:2014", clause: "690.8(A)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
    { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)" },
    { in: "UTE C15-712-1:2010", clause: "14.1", grade: "reproduced", seen: "GuidEnR course:2011, rating of switching devices" },
    { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
  ],
});

/**
 * Current factor of an array, raised where more light reaches it than its front at standard test conditions. @function
 *
 * @example
 * ```ts
 * import { currentFactor } from "pv-to-grid/string";
 * currentFactor({ currentCorrection: "1.08" }).text; // "1.35"
 * ```
 */
export const currentFactor = /* @__PURE__ */ formula({
  id: "string/current-factor",
  about: "current factor of an array, raised where more light reaches it than its front at standard test conditions",
  takes: {
    currentCorrection: { unit: "1", symbol: "K_Corr", about: "correction for light on the rear or for an unusual site; 1 for none", from: 1, to: 2, usual: [1, 1.3] },
  },
  constants: {
    irradianceFactor: {
      value: "1.25", unit: "1", symbol: "1.25", about: "allowance for irradiance above that of the standard test conditions",
      source: [
        { in: "AS/NZS 5033:2021", clause: "4.2.2", grade: "reproduced", seen: "RFI article on AS/NZS 5033:undated, example" },
        { in: "NFPA 70:2020", clause: "690.8(A)(1)(a)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(A)(1)(a)" },
        { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
      ],
    },
  },
  gives: { unit: "1", symbol: "K_I" },
  expression: "irradianceFactor * currentCorrection",
  source: [{ in: "IEC 62548-1:2023", clause: "annex F", grade: "memory" }],
  unproven: { because: "no publication found", sought: "IEC 62548-1 2023 annex F worked example, K_Corr, bifacial current factor" },
});

/**
 * Maximum current of a string by its current factor. @function
 *
 * @example
 * ```ts
 * import { maximumCurrentByFactor } from "pv-to-grid/string";
 * maximumCurrentByFactor({ currentFactor: "1.35", shortCircuitCurrent: "14 A" }).text; // "18.9"
 * ```
 */
export const maximumCurrentByFactor = /* @__PURE__ */ formula({
  id: "string/maximum-current-by-factor",
  about: "maximum current of a string by its current factor",
  takes: {
    currentFactor: { unit: "1", symbol: "K_I", about: "current factor, at least 1.25", from: 1.25, to: 2.5, usual: [1.25, 1.6] },
    shortCircuitCurrent: { unit: "A", symbol: "I_SC", about: "short-circuit current at standard test conditions, of one string or the sum of parallel ones", from: 0, usual: [0.1, 1000] },
  },
  gives: { unit: "A", symbol: "I_SC,max" },
  expression: "currentFactor * shortCircuitCurrent",
  source: [
    { in: "IEC 62548-1:2023", clause: "6.5 and annex F", grade: "memory" },
    { in: "IEC 60364-7-712:2017", clause: "annex B", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "IEC 62548-1 2023 annex F worked example, K_I, ISC MAX" },
});
