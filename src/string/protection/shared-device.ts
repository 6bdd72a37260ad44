import { formula } from "../../formula/index.js";

/**
 * Module rating that is left for a device shared by several strings, after what its neighbours add. @function
 *
 * @example
 * ```ts
 * import { moduleRatingLeft } from "pv-to-grid/string";
 * moduleRatingLeft({ maximumSeriesFuse: "25 A", strings: 2, currentOfOne: "9 A" }).text; // "16"
 * ```
 */
export const moduleRatingLeft = /* @__PURE__ */ formula({
  id: "string/module-rating-left",
  about: "module rating that is left for a device shared by several strings, after what its neighbours add",
  takes: {
    maximumSeriesFuse: { unit: "A", symbol: "I_MOD,max", about: "largest overcurrent protection rating of the module", above: 0, usual: [1, 60] },
    strings: { unit: "1", symbol: "N_G", about: "strings that share the device", from: 1, usual: [1, 10] },
    currentOfOne: { unit: "A", symbol: "I_1", about: "current that each neighbour adds", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_left" },
  expression: "maximumSeriesFuse - (strings - 1) * currentOfOne",
  source: [
    { in: "Alternative energy forum 974:undated", clause: "answer after Wiles, Suggested Practices, p. 132", grade: "copied" },
    { in: "IEC 62548:2016", clause: "6.5", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "several strings on one device in an edited publication; a forum answer works the sum the other way round" },
});

/**
 * Module rating that several strings on one device need, from the device and what the neighbours add. @function
 *
 * @example
 * ```ts
 * import { moduleRatingNeeded } from "pv-to-grid/string";
 * moduleRatingNeeded({ ratedCurrent: "3.81 A", strings: 2, currentOfOne: "1.525 A" }).text; // "5.335"
 * ```
 */
export const moduleRatingNeeded = /* @__PURE__ */ formula({
  id: "string/module-rating-needed",
  about: "module rating that several strings on one device need, from the device and what the neighbours add",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the shared device", above: 0, usual: [1, 60] },
    strings: { unit: "1", symbol: "N_G", about: "strings that share the device", from: 1, usual: [1, 10] },
    currentOfOne: { unit: "A", symbol: "I_1", about: "current that each neighbour adds", from: 0, usual: [0.1, 60] },
  },
  gives: { unit: "A", symbol: "I_MOD,due" },
  expression: "ratedCurrent + (strings - 1) * currentOfOne",
  source: [
    { in: "Alternative energy forum 974:undated", clause: "answer after Wiles, Suggested Practices, p. 132", grade: "copied" },
    { in: "NFPA 70:2020", clause: "690.8(D)", grade: "copied", seen: "California Electrical Code:2022, 690.8(D)" },
  ],
  unproven: { because: "no publication found", sought: "several strings on one device in an edited publication; the one found is a forum answer" },
});
