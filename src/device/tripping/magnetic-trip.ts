import { formula } from "../../formula/index.js";

/**
 * Current of the instantaneous release of a breaker. @function
 *
 * @example
 * ```ts
 * import { instantaneousTripCurrent } from "pv-to-grid/device";
 * instantaneousTripCurrent({ ratedCurrent: "20 A", tripMultiple: "5" }).text; // "100"
 * ```
 */
export const instantaneousTripCurrent = /* @__PURE__ */ formula({
  id: "device/instantaneous-trip-current",
  about: "current of the instantaneous release of a breaker",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the device", above: 0, usual: [0.5, 6300] },
    tripMultiple: { unit: "1", symbol: "m", about: "multiple of the rated current at which it trips", from: 1, to: 50 },
  },
  gives: { unit: "A", symbol: "I_a" },
  expression: "ratedCurrent * tripMultiple",
  source: [{ in: "IEC 60898-1:2015", clause: "table 7", grade: "reproduced", seen: "Yuanky breaker page:undated, test procedures D and E" }],
  unproven: { because: "definition" },
});
