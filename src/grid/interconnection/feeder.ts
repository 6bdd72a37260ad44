import { formula } from "../../formula/index.js";

/**
 * Ampacity that a feeder needs beyond the point where sources are connected to it.
 *
 * @function
 * @example
 * ```ts
 * import { feederAmpacityNeeded } from "pv-to-grid/grid";
 * feederAmpacityNeeded({ sourceCurrents: ["40 A"], feederDevice: "100 A" }).text; // "150"
 * ```
 */
export const feederAmpacityNeeded = /* @__PURE__ */ formula({
  id: "grid/feeder-ampacity-needed",
  about: "ampacity that a feeder needs beyond the point where sources are connected to it",
  takes: {
    sourceCurrents: { each: "A", symbol: "I_src", about: "continuous output current of each source", from: 0, usual: [0, 10000] },
    feederDevice: { unit: "A", symbol: "I_feeder", about: "rating of the device at the head of the feeder", from: 0, usual: [0, 10000] },
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
  gives: { unit: "A", symbol: "I_z" },
  expression: "feederDevice + powerSourceFactor * sum(sourceCurrents)",
  source: [
    { in: "NFPA 70:2023", clause: "705.12(A)(2)", grade: "reproduced", seen: "Electrical License Renewal 2023:2023, section 1567" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(1)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
  unproven: { because: "no publication found", sought: "feeder with source currents, device and ampacity printed" },
});

/**
 * Ampacity of a tap on a feeder with sources, by currents, editions 2017 and 2020.
 *
 * @function
 * @example
 * ```ts
 * import { tapAmpacityByCurrents } from "pv-to-grid/grid";
 * tapAmpacityByCurrents({ sourceCurrents: ["16 A", "24 A"], feederDevice: "100 A" }).text; // "50"
 * ```
 */
export const tapAmpacityByCurrents = /* @__PURE__ */ formula({
  id: "grid/tap-ampacity-by-currents",
  about: "ampacity of a tap on a feeder with sources, by currents, editions 2017 and 2020",
  takes: {
    sourceCurrents: { each: "A", symbol: "I_src", about: "continuous output current of each source", from: 0, usual: [0, 10000] },
    feederDevice: { unit: "A", symbol: "I_feeder", about: "rating of the device at the head of the feeder", from: 0, usual: [0, 10000] },
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
  gives: { unit: "A", symbol: "I_tap" },
  expression: "(feederDevice + powerSourceFactor * sum(sourceCurrents)) / 3",
  source: [{ in: "NFPA 70:2017", clause: "705.12(B)(2)(2) with 240.21(B)(2)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  note: "one third, for taps up to 7.5 m (25 ft)",
  unproven: { because: "no publication found", sought: "tap on a feeder with sources with its ampacity printed" },
});

/**
 * Ampacity of a tap on a feeder with sources, by devices, edition 2023.
 *
 * @function
 * @example
 * ```ts
 * import { tapAmpacityByDevices } from "pv-to-grid/grid";
 * tapAmpacityByDevices({ sourceDevices: ["20 A", "30 A"], feederDevice: "100 A" }).text; // "50"
 * ```
 */
export const tapAmpacityByDevices = /* @__PURE__ */ formula({
  id: "grid/tap-ampacity-by-devices",
  about: "ampacity of a tap on a feeder with sources, by devices, edition 2023",
  takes: {
    sourceDevices: { each: "A", symbol: "I_n,src", about: "rating of the device of each source", from: 0, usual: [0, 10000] },
    feederDevice: { unit: "A", symbol: "I_feeder", about: "rating of the device at the head of the feeder", from: 0, usual: [0, 10000] },
  },
  gives: { unit: "A", symbol: "I_tap" },
  expression: "(feederDevice + sum(sourceDevices)) / 3",
  source: [{ in: "NFPA 70:2023", clause: "705.12(A)(3)", grade: "reproduced", seen: "Electrical License Renewal 2023:2023, section 1567" }],
  unproven: { because: "no publication found", sought: "tap on a feeder with sources with its ampacity printed" },
});
