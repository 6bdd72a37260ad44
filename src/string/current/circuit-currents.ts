import { formula } from "../../formula/index.js";

/**
 * Least rating of an unprotected string cable behind a device that other strings share. @function
 *
 * @example
 * ```ts
 * import { stringCableCurrentBehindDevice } from "pv-to-grid/string";
 * stringCableCurrentBehindDevice({ ratedCurrent: "32 A", strings: 2, maximumCurrent: "17.5 A" }).text; // "49.5"
 * ```
 */
export const stringCableCurrentBehindDevice = /* @__PURE__ */ formula({
  id: "string/string-cable-current-behind-device",
  about: "least rating of an unprotected string cable behind a device that other strings share",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the nearest device towards the inverter", above: 0, usual: [1, 630] },
    strings: { unit: "1", symbol: "S_PO", about: "strings in parallel behind that device, this one included", from: 1, usual: [1, 50] },
    maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current of one string", from: 0, usual: [0.1, 80] },
  },
  gives: { unit: "A", symbol: "I_z,min" },
  expression: "ratedCurrent + (strings - 1) * maximumCurrent",
  source: [
    { in: "NFPA 70:2020", clause: "690.8(D)", grade: "copied", seen: "California Electrical Code:2022, 690.8(D)" },
    { in: "AS/NZS 5033:2021", clause: "current rating of circuits", grade: "memory" },
    { in: "IEC 62548:2016", clause: "current rating of circuits", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "IEC 62548 AS/NZS 5033 minimum current rating of circuits string not protected worked example" },
});

/**
 * Least rating of a string cable where no device is in the array. @function
 *
 * @example
 * ```ts
 * import { stringCableCurrentWithoutDevice } from "pv-to-grid/string";
 * stringCableCurrentWithoutDevice({ strings: 3, maximumCurrent: "17.5 A" }).text; // "35"
 * ```
 */
export const stringCableCurrentWithoutDevice = /* @__PURE__ */ formula({
  id: "string/string-cable-current-without-device",
  about: "least rating of a string cable where no device is in the array",
  takes: {
    strings: { unit: "1", symbol: "S_A", about: "strings in parallel, all of them", from: 1, usual: [1, 50] },
    maximumCurrent: { unit: "A", symbol: "I_max", about: "maximum current of one string", from: 0, usual: [0.1, 80] },
  },
  gives: { unit: "A", symbol: "I_z,min" },
  expression: "max(strings - 1, 1) * maximumCurrent",
  source: [
    { in: "AS/NZS 5033:2021", clause: "current rating of circuits", grade: "memory" },
    { in: "IEC 62548:2016", clause: "current rating of circuits", grade: "memory" },
    { in: "MCS guide:2012", clause: "2.1, string cables without fuses", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "IEC 62548 AS/NZS 5033 minimum current rating of circuits string not protected worked example" },
});

/**
 * Least rating of an unprotected sub-array cable beside others. @function
 *
 * @example
 * ```ts
 * import { subArrayCableCurrent } from "pv-to-grid/string";
 * subArrayCableCurrent({ ratedCurrent: "160 A", otherCurrents: "70 A", ownCurrent: "35 A" }).text; // "230"
 * ```
 */
export const subArrayCableCurrent = /* @__PURE__ */ formula({
  id: "string/sub-array-cable-current",
  about: "least rating of an unprotected sub-array cable beside others",
  takes: {
    ratedCurrent: { unit: "A", symbol: "I_n", about: "rated current of the array device, 0 where there is none", from: 0, usual: [0, 2000] },
    otherCurrents: { unit: "A", symbol: "ΣI_max", about: "maximum current of the other sub-arrays", from: 0, usual: [0, 5000] },
    ownCurrent: { unit: "A", symbol: "I_max", about: "maximum current of this sub-array", from: 0, usual: [1, 2000] },
  },
  gives: { unit: "A", symbol: "I_z,min" },
  expression: "max(ratedCurrent + otherCurrents, ownCurrent)",
  source: [
    { in: "AS/NZS 5033:2021", clause: "current rating of circuits", grade: "memory" },
    { in: "IEC 62548:2016", clause: "current rating of circuits", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "IEC 62548 AS/NZS 5033 minimum current rating of circuits sub-array worked example" },
});
