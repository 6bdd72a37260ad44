import { formula } from "../../formula/index.js";

/**
 * Protection level that equipment near the device allows. @function
 *
 * @example
 * ```ts
 * import { allowedProtectionLevel } from "pv-to-grid/surge";
 * allowedProtectionLevel({ impulseWithstand: "2.5 kV" }).text; // "2000"
 * ```
 */
export const allowedProtectionLevel = /* @__PURE__ */ formula({
  id: "surge/allowed-protection-level",
  about: "protection level that equipment near the device allows",
  takes: {
    impulseWithstand: { unit: "V", symbol: "U_w", about: "impulse withstand voltage of the equipment", above: 0, usual: [300, 20000] },
  },
  constants: {
    protectionShare: {
      value: "0.8", unit: "1", symbol: "0.8", about: "share of the impulse withstand that is used",
      source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.4.2", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "0.8 U_w" },
  expression: "protectionShare * impulseWithstand",
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.4.2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Protection level that equipment far from the device allows, since the surge doubles on the way. @function
 *
 * @example
 * ```ts
 * import { allowedDistantProtectionLevel } from "pv-to-grid/surge";
 * allowedDistantProtectionLevel({ impulseWithstand: "4 kV" }).text; // "1600"
 * ```
 */
export const allowedDistantProtectionLevel = /* @__PURE__ */ formula({
  id: "surge/allowed-distant-protection-level",
  about: "protection level that equipment far from the device allows, since the surge doubles on the way",
  takes: {
    impulseWithstand: { unit: "V", symbol: "U_w", about: "impulse withstand voltage of the equipment", above: 0, usual: [300, 20000] },
  },
  constants: {
    protectionShare: {
      value: "0.8", unit: "1", symbol: "0.8", about: "share of the impulse withstand that is used",
      source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.4.2", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "0.8 U_w / 2" },
  expression: "protectionShare * impulseWithstand / 2",
  source: [{ in: "Finder surge guide:2012", clause: "p. 59", grade: "original" }],
  unproven: { because: "definition" },
});

/**
 * Protection level of a device with the voltage along its leads. @function
 *
 * @example
 * ```ts
 * import { effectiveProtectionLevel } from "pv-to-grid/surge";
 * effectiveProtectionLevel({ protectionLevel: "1.5 kV", leadLength: "0.5 m" }).text; // "2000"
 * ```
 */
export const effectiveProtectionLevel = /* @__PURE__ */ formula({
  id: "surge/effective-protection-level",
  about: "protection level of a device with the voltage along its leads",
  takes: {
    protectionLevel: { unit: "V", symbol: "U_p", about: "protection level of the device", above: 0, usual: [100, 10000] },
    leadLength: { unit: "m", symbol: "l", about: "leads of the surge device together", from: 0, to: 10 },
  },
  constants: {
    leadVoltage: {
      value: "1000", unit: "V", symbol: "1 kV", about: "voltage along a metre of lead",
      source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.8", grade: "memory" }],
    },
    oneMetre: {
      value: "1", unit: "m", symbol: "1 m", about: "a metre",
      source: [{ in: "common practice", clause: "definition of the metre", grade: "common-practice" }],
    },
  },
  gives: { unit: "V", symbol: "U_p/f" },
  expression: "protectionLevel + leadVoltage / oneMetre * leadLength",
  source: [{ in: "IEC 60364-5-53:2019", clause: "534.4.8", grade: "memory" }],
  unproven: { because: "no publication found", sought: "protection level with lead length worked in numbers" },
});

/**
 * Supply voltage against earth that a device must stand for ever. @function
 *
 * @example
 * ```ts
 * import { highestSupplyVoltage } from "pv-to-grid/surge";
 * highestSupplyVoltage({ lineToEarth: "230 V" }).text; // "253"
 * ```
 */
export const highestSupplyVoltage = /* @__PURE__ */ formula({
  id: "surge/highest-supply-voltage",
  about: "supply voltage against earth that a device must stand for ever",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
  },
  constants: {
    supplyMargin: {
      value: "1.1", unit: "1", symbol: "1.1", about: "highest supply voltage over the nominal one",
      source: [
        { in: "Finder surge guide:2012", clause: "p. 59", grade: "original" },
        { in: "IEC 60364-5-53:2019", clause: "table 534.2", grade: "memory" },
      ],
    },
  },
  gives: { unit: "V", symbol: "1.1 U_0" },
  expression: "supplyMargin * lineToEarth",
  source: [
    { in: "Finder surge guide:2012", clause: "p. 59", grade: "original" },
    { in: "IEC 60364-5-53:2019", clause: "table 534.2", grade: "memory" },
  ],
  unproven: { because: "definition" },
});

/**
 * Highest voltage of an array where coefficient or temperature is not known. @function
 *
 * @example
 * ```ts
 * import { arrayVoltageByFactor } from "pv-to-grid/surge";
 * arrayVoltageByFactor({ openCircuitVoltage: "756.5 V" }).text; // "907.8"
 * ```
 */
export const arrayVoltageByFactor = /* @__PURE__ */ formula({
  id: "surge/array-voltage-by-factor",
  about: "highest voltage of an array where coefficient or temperature is not known",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 1500] },
  },
  constants: {
    unknownColdFactor: {
      value: "1.2", unit: "1", symbol: "K_U", about: "highest over standard open-circuit voltage",
      source: [{ in: "IEC 61643-32:2017", clause: "selection of U_CPV", grade: "memory" }],
    },
  },
  gives: { unit: "V", symbol: "1.2 U_OC" },
  expression: "unknownColdFactor * openCircuitVoltage",
  source: [{ in: "IEC 61643-32:2017", clause: "selection of U_CPV", grade: "memory" }],
  unproven: { because: "no publication found", sought: "U_CPV by the factor 1.2 worked in numbers" },
});
