import { formula } from "../../formula/index.js";

/**
 * Overload of a cable that its device must end within the conventional time. @function
 *
 * @example
 * ```ts
 * import { toleratedOverload } from "pv-to-grid/protection";
 * toleratedOverload({ ampacity: "35 A" }).text; // "50.75"
 * ```
 */
export const toleratedOverload = /* @__PURE__ */ formula({
  id: "protection/tolerated-overload",
  about: "overload of a cable that its device must end within the conventional time",
  takes: { ampacity: { unit: "A", symbol: "I_z", about: "current-carrying capacity as laid", above: 0, usual: [1, 5000] } },
  constants: {
    overloadShare: {
      value: "1.45",
      unit: "1",
      symbol: "k_o",
      about: "tolerated overload over current-carrying capacity",
      source: [{ in: "IEC 60364-4-43:2008", clause: "433.1, condition 2", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "1.45 I_z" },
  expression: "overloadShare * ampacity",
  source: [{ in: "IEC 60364-4-43:2008", clause: "433.1, condition 2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Current that a breaker carries at the temperature of its board and beside its neighbours, by the maker's factor. @function
 *
 * @example
 * ```ts
 * import { correctedDeviceRating } from "pv-to-grid/protection";
 * correctedDeviceRating({ ratedCurrent: "25 A", ambientFactor: "0.9" }).text; // "22.5"
 * ```
 */
export const correctedDeviceRating = /* @__PURE__ */ formula({
  id: "protection/corrected-device-rating",
  about: "current that a breaker carries at the temperature of its board and beside its neighbours, by the maker's factor",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the device", above: 0, usual: [0.5, 6300] },
    ambientFactor: { unit: "1", symbol: "k", about: "maker's factor for ambient and neighbours", above: 0, to: 1.5 },
  },
  gives: { unit: "A", symbol: "k I_n" },
  expression: "ambientFactor * ratedCurrent",
  source: [{ in: "common practice", clause: "correction tables of the makers of breakers", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Load of a breaker up to which no correction for its place is asked for. @function
 *
 * @example
 * ```ts
 * import { uncorrectedDeviceLoad } from "pv-to-grid/protection";
 * uncorrectedDeviceLoad({ ratedCurrent: "25 A" }).text; // "20"
 * ```
 */
export const uncorrectedDeviceLoad = /* @__PURE__ */ formula({
  id: "protection/uncorrected-device-load",
  about: "load of a breaker up to which no correction for its place is asked for",
  takes: { ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the device", above: 0, usual: [0.5, 6300] } },
  constants: {
    uncorrectedShare: {
      value: "0.8",
      unit: "1",
      symbol: "k_u",
      about: "load over rated current that needs no correction",
      source: [{ in: "common practice", clause: "rule of the trade for breakers that stand alone", grade: "common-practice" }],
    },
  },
  gives: { unit: "A", symbol: "0.8 I_n" },
  expression: "uncorrectedShare * ratedCurrent",
  source: [{ in: "common practice", clause: "rule of the trade for breakers that stand alone", grade: "common-practice" }],
  unproven: { because: "definition" },
});
