import { condition } from "../../formula/index.js";

/**
 * Does the feeder carry its device and 125 % of the sources?
 *
 * @function
 * @example
 * ```ts
 * import { feederCarriesSources } from "pv-to-grid/grid";
 * feederCarriesSources({ value: "150 A", limit: "150 A" }).verdict; // "met"
 * ```
 */
export const feederCarriesSources = /* @__PURE__ */ condition({
  id: "grid/feeder-carries-sources",
  asks: "Does the feeder carry its device and 125 % of the sources?",
  force: "requirement",
  value: { unit: "A", symbol: "I_z,due", about: "device of the feeder plus 125 % of the output currents of the sources" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "ampacity of the feeder beyond the connection" },
  source: [
    { in: "NFPA 70:2023", clause: "705.12(A)(2)", grade: "reproduced", seen: "Electrical License Renewal 2023:2023, section 1567" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(1)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
});

/**
 * Does a device beyond the connection protect the feeder?
 *
 * @function
 * @example
 * ```ts
 * import { deviceProtectsFeeder } from "pv-to-grid/grid";
 * deviceProtectsFeeder({ value: "110 A", limit: "100 A" }).verdict; // "not met"
 * ```
 */
export const deviceProtectsFeeder = /* @__PURE__ */ condition({
  id: "grid/device-protects-feeder",
  asks: "Does a device beyond the connection protect the feeder?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rating of the device on the load side of the connection" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z", about: "ampacity of the feeder beyond the connection" },
  source: [
    { in: "NFPA 70:2023", clause: "705.12(A)(2)", grade: "reproduced", seen: "Electrical License Renewal 2023:2023, section 1567" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(1)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
});

/**
 * Does the tap carry its share of the feeder and the sources?
 *
 * @function
 * @example
 * ```ts
 * import { tapCarriesItsShare } from "pv-to-grid/grid";
 * tapCarriesItsShare({ value: "50 A", limit: "55 A" }).verdict; // "met"
 * ```
 */
export const tapCarriesItsShare = /* @__PURE__ */ condition({
  id: "grid/tap-carries-its-share",
  asks: "Does the tap carry its share of the feeder and the sources?",
  force: "requirement",
  value: { unit: "A", symbol: "I_tap,due", about: "ampacity that the tap needs" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_tap", about: "ampacity of the tap" },
  source: [
    { in: "NFPA 70:2023", clause: "705.12(A)(3)", grade: "reproduced", seen: "Electrical License Renewal 2023:2023, section 1567" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(2)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
});

/**
 * Do the devices of the sources stay within the rating of the service?
 *
 * @function
 * @example
 * ```ts
 * import { sourceDevicesWithinService } from "pv-to-grid/grid";
 * sourceDevicesWithinService({ value: "225 A", limit: "200 A" }).verdict; // "not met"
 * ```
 */
export const sourceDevicesWithinService = /* @__PURE__ */ condition({
  id: "grid/source-devices-within-service",
  asks: "Do the devices of the sources stay within the rating of the service?",
  force: "requirement",
  value: { unit: "A", symbol: "I_dev", about: "sum of the ratings of the devices of the sources" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_service", about: "rating of the service" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(A)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
});

/**
 * Do the output currents of the sources stay within the service conductors?
 *
 * @function
 * @example
 * ```ts
 * import { sourceCurrentsWithinService } from "pv-to-grid/grid";
 * sourceCurrentsWithinService({ value: "180 A", limit: "200 A" }).verdict; // "met"
 * ```
 */
export const sourceCurrentsWithinService = /* @__PURE__ */ condition({
  id: "grid/source-currents-within-service",
  asks: "Do the output currents of the sources stay within the service conductors?",
  force: "requirement",
  value: { unit: "A", symbol: "I_Σ", about: "sum of the continuous output currents of the sources" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z,service", about: "ampacity of the service conductors" },
  source: [{ in: "NFPA 70:2020", clause: "705.11(A)", grade: "memory" }],
  note: "sources under a power control system are left out of the sum",
});
