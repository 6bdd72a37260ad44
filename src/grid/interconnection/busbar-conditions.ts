import { condition } from "../../formula/index.js";

/**
 * Do 125 % of the sources and the main device stay within the busbar?
 *
 * @function
 * @example
 * ```ts
 * import { busbarWithinRating } from "pv-to-grid/grid";
 * busbarWithinRating({ value: "215 A", limit: "200 A" }).verdict; // "not met"
 * ```
 */
export const busbarWithinRating = /* @__PURE__ */ condition({
  id: "grid/busbar-within-rating",
  asks: "Do 125 % of the sources and the main device stay within the busbar?",
  force: "requirement",
  value: { unit: "A", symbol: "I_bus", about: "125 % of the output currents of the sources plus the main device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar" },
  source: [
    { in: "NFPA 70:2020", clause: "705.12(B)(3)(1)", grade: "reproduced", seen: "Electrical License Renewal 2020:2020, section 972" },
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(a)", grade: "copied", seen: "NEC 2017 transcription:undated" },
  ],
  worse: { "boards[].busbarRating": "down", "inverters[].maximumAcCurrent": "up" },
});

/**
 * Do 125 % of the sources and the main device stay within 120 % of the busbar?
 *
 * @function
 * @example
 * ```ts
 * import { busbarWithinAllowance } from "pv-to-grid/grid";
 * busbarWithinAllowance({ value: "240 A", limit: "240 A" }).verdict; // "met"
 * ```
 */
export const busbarWithinAllowance = /* @__PURE__ */ condition({
  id: "grid/busbar-within-allowance",
  asks: "Do 125 % of the sources and the main device stay within 120 % of the busbar?",
  force: "requirement",
  value: { unit: "A", symbol: "I_bus", about: "125 % of the output currents of the sources plus the main device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_120", about: "120 % of the ampacity of the busbar" },
  source: [
    { in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b)", grade: "copied", seen: "Holt forum 180560:undated, first post" },
    { in: "NFPA 70:2020", clause: "705.12(B)(3)(2)", grade: "memory" },
  ],
  worse: { "boards[].busbarRating": "down", "inverters[].maximumAcCurrent": "up" },
});

/**
 * Does the source feed the busbar from the place that the rule asks for?
 *
 * @function
 * @example
 * ```ts
 * import { sourcePlacedAsAsked } from "pv-to-grid/grid";
 * sourcePlacedAsAsked({ value: "elsewhere", limit: ["opposite end from the supply"] }).verdict; // "not met"
 * ```
 */
export const sourcePlacedAsAsked = /* @__PURE__ */ condition({
  id: "grid/source-placed-as-asked",
  asks: "Does the source feed the busbar from the place that the rule asks for?",
  force: "requirement",
  value: { named: true, about: "where the source is connected" },
  relation: "one of",
  limit: { named: true, about: "places that the rule allows" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(b) and (d)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  note: "with a label that forbids moving the device",
});

/**
 * Do the devices of loads and sources together stay within the busbar?
 *
 * @function
 * @example
 * ```ts
 * import { devicesWithinBusbar } from "pv-to-grid/grid";
 * devicesWithinBusbar({ value: "200 A", limit: "200 A" }).verdict; // "met"
 * ```
 */
export const devicesWithinBusbar = /* @__PURE__ */ condition({
  id: "grid/devices-within-busbar",
  asks: "Do the devices of loads and sources together stay within the busbar?",
  force: "requirement",
  value: { unit: "A", symbol: "I_dev", about: "sum of the ratings of all devices but the main one" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(c)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  worse: { "boards[].busbarRating": "down", "boards[].loadDevices": "up" },
});

/**
 * Does the main device stay within the busbar?
 *
 * @function
 * @example
 * ```ts
 * import { mainDeviceWithinBusbar } from "pv-to-grid/grid";
 * mainDeviceWithinBusbar({ value: "175 A", limit: "200 A" }).verdict; // "met"
 * ```
 */
export const mainDeviceWithinBusbar = /* @__PURE__ */ condition({
  id: "grid/main-device-within-busbar",
  asks: "Does the main device stay within the busbar?",
  force: "requirement",
  value: { unit: "A", symbol: "I_main", about: "rating of the device that protects the busbar" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(c)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  worse: { "boards[].busbarRating": "down" },
});

/**
 * Does the power control system keep the busbar within its ampacity?
 *
 * @function
 * @example
 * ```ts
 * import { controlledWithinBusbar } from "pv-to-grid/grid";
 * controlledWithinBusbar({ value: "200 A", limit: "200 A" }).verdict; // "met"
 * ```
 */
export const controlledWithinBusbar = /* @__PURE__ */ condition({
  id: "grid/controlled-within-busbar",
  asks: "Does the power control system keep the busbar within its ampacity?",
  force: "requirement",
  value: { unit: "A", symbol: "I_bus", about: "controlled current plus the main device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_bb", about: "ampacity of the busbar" },
  source: [{ in: "NFPA 70:2020", clause: "705.13(B)", grade: "memory" }],
  note: "listed power control system, set by qualified persons, setting not open to the user",
});

/**
 * Is the arrangement worked out under engineering supervision?
 *
 * @function
 * @example
 * ```ts
 * import { engineeredBusbar } from "pv-to-grid/grid";
 * engineeredBusbar({ value: "engineering supervision", limit: ["engineering supervision"] }).verdict; // "met"
 * ```
 */
export const engineeredBusbar = /* @__PURE__ */ condition({
  id: "grid/engineered-busbar",
  asks: "Is the arrangement worked out under engineering supervision?",
  force: "requirement",
  value: { named: true, about: "who has worked it out" },
  relation: "one of",
  limit: { named: true, about: "who may" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(B)(2)(3)(e)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
  note: "busbars with several supplies or ampacities, with fault studies and busbar load calculations",
});
