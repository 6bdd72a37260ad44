import { condition } from "../../formula/index.js";

/**
 * Is there a surge protective device where one is needed? @function
 *
 * @example
 * ```ts
 * import { surgeDevicePresent } from "pv-to-grid/surge";
 * surgeDevicePresent({ value: "type 2", limit: ["type 2", "type 1", "type 1 and 2"] }).verdict; // "met"
 * ```
 */
export const surgeDevicePresent = /* @__PURE__ */ condition({
  id: "surge/surge-device-present",
  asks: "Is there a surge protective device where one is needed?",
  force: "requirement",
  value: { named: true, about: "surge protective device" },
  relation: "one of",
  limit: { named: true, about: "what the place asks for" },
  source: [{ in: "IEC 60364-4-44:2007", clause: "443.4", grade: "memory" }],
});

/**
 * Is the device of the type that the lightning protection asks for? @function
 *
 * @example
 * ```ts
 * import { surgeTypeSuitsLightning } from "pv-to-grid/surge";
 * surgeTypeSuitsLightning({ value: "type 2", limit: ["type 1", "type 1 and 2"] }).verdict; // "not met"
 * ```
 */
export const surgeTypeSuitsLightning = /* @__PURE__ */ condition({
  id: "surge/surge-type-suits-lightning",
  asks: "Is the device of the type that the lightning protection asks for?",
  force: "requirement",
  value: { named: true, about: "type of the device" },
  relation: "one of",
  limit: { named: true, about: "types that the situation allows" },
  source: [{ in: "DEHN training slides:2014", clause: "table 1 of VDE 0185-305-3 supplement 5", grade: "original" }],
});

/**
 * Does the d.c. device stand the highest voltage of the array for ever? @function
 *
 * @example
 * ```ts
 * import { surgeDeviceCarriesVoltage } from "pv-to-grid/surge";
 * surgeDeviceCarriesVoltage({ value: "1100 V", limit: "908 V" }).verdict; // "met"
 * ```
 */
export const surgeDeviceCarriesVoltage = /* @__PURE__ */ condition({
  id: "surge/surge-device-carries-voltage",
  asks: "Does the d.c. device stand the highest voltage of the array for ever?",
  force: "requirement",
  value: { unit: "V", symbol: "U_CPV", about: "highest continuous voltage of the device" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_OC,max", about: "open-circuit voltage at the coldest temperature" },
  source: [{ in: "IEC 61643-32:2017", clause: "selection of U_CPV and I_SCPV", grade: "memory" }],
  worse: { "site.coldest": "down" },
});

/**
 * Does the d.c. device stand the highest current of the array when it fails? @function
 *
 * @example
 * ```ts
 * import { surgeDeviceStandsShortCircuit } from "pv-to-grid/surge";
 * surgeDeviceStandsShortCircuit({ value: "1000 A", limit: "35 A" }).verdict; // "met"
 * ```
 */
export const surgeDeviceStandsShortCircuit = /* @__PURE__ */ condition({
  id: "surge/surge-device-stands-short-circuit",
  asks: "Does the d.c. device stand the highest current of the array when it fails?",
  force: "requirement",
  value: { unit: "A", symbol: "I_SCPV", about: "short-circuit rating of the device" },
  relation: "≥",
  limit: { unit: "A", symbol: "I_max", about: "highest current of the array behind it" },
  source: [{ in: "IEC 61643-32:2017", clause: "selection of U_CPV and I_SCPV", grade: "memory" }],
});

/**
 * Does the a.c. device stand the supply voltage for ever? @function
 *
 * @example
 * ```ts
 * import { surgeDeviceCarriesSupply } from "pv-to-grid/surge";
 * surgeDeviceCarriesSupply({ value: "275 V", limit: "253 V" }).verdict; // "met"
 * ```
 */
export const surgeDeviceCarriesSupply = /* @__PURE__ */ condition({
  id: "surge/surge-device-carries-supply",
  asks: "Does the a.c. device stand the supply voltage for ever?",
  force: "requirement",
  value: { unit: "V", symbol: "U_c", about: "highest continuous voltage of the device" },
  relation: "≥",
  limit: { unit: "V", symbol: "1.1 U_0", about: "highest voltage of the supply against earth" },
  source: [
    { in: "Finder surge guide:2012", clause: "p. 59", grade: "original" },
    { in: "IEC 60364-5-53:2019", clause: "table 534.2", grade: "memory" },
  ],
});

/**
 * Does the device hold surges below what the equipment withstands? @function
 *
 * @example
 * ```ts
 * import { protectionLevelLowEnough } from "pv-to-grid/surge";
 * protectionLevelLowEnough({ value: "1.5 kV", limit: "2 kV" }).verdict; // "met"
 * ```
 */
export const protectionLevelLowEnough = /* @__PURE__ */ condition({
  id: "surge/protection-level-low-enough",
  asks: "Does the device hold surges below what the equipment withstands?",
  force: "requirement",
  value: { unit: "V", symbol: "U_p", about: "protection level of the device with its leads" },
  relation: "≤",
  limit: { unit: "V", symbol: "k U_w", about: "allowed share of the impulse withstand" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.4", grade: "memory" }],
  worse: { "surgeDevices[].leadLength": "up" },
});

/**
 * Are the leads of the device shorter than a metre in all? @function
 *
 * @example
 * ```ts
 * import { leadsShortEnough } from "pv-to-grid/surge";
 * leadsShortEnough({ value: "0.8 m", limit: "1 m" }).verdict; // "met"
 * ```
 */
export const leadsShortEnough = /* @__PURE__ */ condition({
  id: "surge/leads-short-enough",
  asks: "Are the leads of the device shorter than a metre in all?",
  force: "requirement",
  value: { unit: "m", symbol: "l", about: "leads of the device together" },
  relation: "≤",
  limit: { unit: "m", symbol: "1 m", about: "longest leads" },
  source: [{ in: "Europa surge guide:undated", clause: "connection leads", grade: "original" }],
  worse: { "surgeDevices[].leadLength": "up" },
});

/**
 * Are the leads of the device no longer than half a metre in all? @function
 *
 * @example
 * ```ts
 * import { leadsShort } from "pv-to-grid/surge";
 * leadsShort({ value: "0.8 m", limit: "0.5 m" }).verdict; // "not met"
 * ```
 */
export const leadsShort = /* @__PURE__ */ condition({
  id: "surge/leads-short",
  asks: "Are the leads of the device no longer than half a metre in all?",
  force: "recommendation",
  value: { unit: "m", symbol: "l", about: "leads of the device together" },
  relation: "≤",
  limit: { unit: "m", symbol: "0.5 m", about: "preferred length of the leads" },
  source: [{ in: "Europa surge guide:undated", clause: "connection leads", grade: "original" }],
  worse: { "surgeDevices[].leadLength": "up" },
});

/**
 * Does one device protect both ends of the cable? @function
 *
 * @example
 * ```ts
 * import { oneDeviceReaches } from "pv-to-grid/surge";
 * oneDeviceReaches({ value: "16 m", limit: "10 m" }).verdict; // "not met"
 * ```
 */
export const oneDeviceReaches = /* @__PURE__ */ condition({
  id: "surge/one-device-reaches",
  asks: "Does one device protect both ends of the cable?",
  force: "recommendation",
  value: { unit: "m", symbol: "L", about: "length of cable between array and inverter" },
  relation: "≤",
  limit: { unit: "m", symbol: "10 m", about: "length that one device protects" },
  source: [{ in: "CHS Controls page:undated", clause: "second device", grade: "original" }],
  worse: { "routes[].stretches[].length": "up" },
  note: "not met: a second device belongs at the other end",
});

/**
 * Is the device upstream no larger than the back-up fuse that the surge device allows? @function
 *
 * @example
 * ```ts
 * import { backUpFuseSmallEnough } from "pv-to-grid/surge";
 * backUpFuseSmallEnough({ value: "63 A", limit: "125 A" }).verdict; // "met"
 * ```
 */
export const backUpFuseSmallEnough = /* @__PURE__ */ condition({
  id: "surge/back-up-fuse-small-enough",
  asks: "Is the device upstream no larger than the back-up fuse that the surge device allows?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "overcurrent device ahead" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,max", about: "largest back-up fuse of the surge device" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.5", grade: "memory" }],
});

/**
 * Is the nominal discharge current of the device enough? @function
 *
 * @example
 * ```ts
 * import { nominalDischargeEnough } from "pv-to-grid/surge";
 * nominalDischargeEnough({ value: "20 kA", limit: "5 kA" }).verdict; // "met"
 * ```
 */
export const nominalDischargeEnough = /* @__PURE__ */ condition({
  id: "surge/nominal-discharge-enough",
  asks: "Is the nominal discharge current of the device enough?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "nominal discharge current" },
  relation: "≥",
  limit: { unit: "A", symbol: "5 kA", about: "least nominal discharge current of class II" },
  source: [
    { in: "Finder surge guide:2012", clause: "p. 59", grade: "original" },
    { in: "IEC 60364-5-53:2019", clause: "534.4.4.4", grade: "memory" },
  ],
});

/**
 * Is the earth conductor of the device large enough? @function
 *
 * @example
 * ```ts
 * import { surgeEarthLargeEnough } from "pv-to-grid/surge";
 * surgeEarthLargeEnough({ value: "6 mm²", limit: "16 mm²" }).verdict; // "not met"
 * ```
 */
export const surgeEarthLargeEnough = /* @__PURE__ */ condition({
  id: "surge/surge-earth-large-enough",
  asks: "Is the earth conductor of the device large enough?",
  force: "requirement",
  value: { unit: "mm²", symbol: "S", about: "earth conductor of the device" },
  relation: "≥",
  limit: { unit: "mm²", symbol: "S_min", about: "smallest earth conductor for the type" },
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.10", grade: "memory" }],
});
