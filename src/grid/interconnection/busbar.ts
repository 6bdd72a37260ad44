import { formula } from "../../formula/index.js";

/**
 * Current that the sources and the main device can bring to a busbar.
 *
 * @function
 * @example
 * ```ts
 * import { busbarLoad } from "pv-to-grid/grid";
 * busbarLoad({ sourceCurrents: ["24 A"], mainDevice: "100 A" }).text; // "130"
 * ```
 */
export const busbarLoad = /* @__PURE__ */ formula({
  id: "grid/busbar-load",
  about: "current that the sources and the main device can bring to a busbar",
  takes: {
    sourceCurrents: { each: "A", symbol: "I_src", about: "continuous output current of each source", from: 0, usual: [0, 10000] },
    mainDevice: { unit: "A", symbol: "I_main", about: "rating of the device that protects the busbar", from: 0, usual: [0, 10000] },
  },
  constants: {
    powerSourceFactor: {
      value: "1.25", unit: "1", symbol: "125 %", about: "allowance for continuous duty of power sources",
      source: [
        { in: "NFPA 70:2020", clause: "705.12(B)(3)(1)", grade: "reproduced", seen: "Electrical License Renewal 2020:2020, section 972" },
        { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(a)", grade: "copied", seen: "NEC 2017 transcription:undated" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_bus" },
  expression: "powerSourceFactor * sum(sourceCurrents) + mainDevice",
  source: [
    { in: "NFPA 70:2020", clause: "705.12(B)(3)(1)", grade: "reproduced", seen: "Electrical License Renewal 2020:2020, section 972" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(a)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
  unproven: { because: "no publication found", sought: "busbar sum with source currents, main device and result printed" },
});

/**
 * Current allowed on a busbar that is fed from opposite ends.
 *
 * @function
 * @example
 * ```ts
 * import { busbarAllowance } from "pv-to-grid/grid";
 * busbarAllowance({ busbarRating: "200 A" }).text; // "240"
 * ```
 */
export const busbarAllowance = /* @__PURE__ */ formula({
  id: "grid/busbar-allowance",
  about: "current allowed on a busbar that is fed from opposite ends",
  takes: { busbarRating: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar", above: 0, usual: [10, 10000] } },
  constants: {
    oppositeEndsFactor: {
      value: "1.2", unit: "1", symbol: "120 %", about: "allowance for a busbar fed from opposite ends",
      source: [
        { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b)", grade: "copied", seen: "Holt forum 180560:undated, first post" },
        { in: "ABP Electrical 120 rule:undated", clause: "body", grade: "original" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_120" },
  expression: "oppositeEndsFactor * busbarRating",
  source: [
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b)", grade: "copied", seen: "Holt forum 180560:undated, first post" },
    { in: "ABP Electrical 120 rule:undated", clause: "body", grade: "original" },
  ],
});

/**
 * Room for the sources on a busbar that is fed from opposite ends.
 *
 * @function
 * @example
 * ```ts
 * import { busbarRoom } from "pv-to-grid/grid";
 * busbarRoom({ busbarRating: "200 A", mainDevice: "175 A" }).text; // "65"
 * ```
 */
export const busbarRoom = /* @__PURE__ */ formula({
  id: "grid/busbar-room",
  about: "room for the sources on a busbar that is fed from opposite ends",
  takes: {
    busbarRating: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar", above: 0, usual: [10, 10000] },
    mainDevice: { unit: "A", symbol: "I_main", about: "rating of the device that protects the busbar", from: 0, usual: [0, 10000] },
  },
  constants: {
    oppositeEndsFactor: {
      value: "1.2", unit: "1", symbol: "120 %", about: "allowance for a busbar fed from opposite ends",
      source: [
        { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b)", grade: "copied", seen: "Holt forum 180560:undated, first post" },
        { in: "ABP Electrical 120 rule:undated", clause: "body", grade: "original" },
      ],
    },
  },
  gives: { unit: "A", symbol: "I_room" },
  expression: "oppositeEndsFactor * busbarRating - mainDevice",
  source: [
    { in: "ABP Electrical 120 rule:undated", clause: "body", grade: "original" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b)", grade: "copied", seen: "Holt forum 180560:undated, first post" },
  ],
  note: "against 125 % of the continuous output currents of the sources; negative where there is none",
});
