import { condition } from "../../formula/index.js";

/** Do 125 % of the sources and the main device stay within the busbar? @function */
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

/** Do 125 % of the sources and the main device stay within 120 % of the busbar? @function */
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

/** Does the source feed the busbar from the place that the rule asks for? @function */
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

/** Do the devices of loads and sources together stay within the busbar? @function */
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

/** Does the main device stay within the busbar? @function */
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

/** Does the power control system keep the busbar within its ampacity? @function */
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

/** Does the feeder carry its device and 125 % of the sources? @function */
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

/** Does a device beyond the connection protect the feeder? @function */
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

/** Does the tap carry its share of the feeder and the sources? @function */
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

/** Do the devices of the sources stay within the rating of the service? @function */
export const sourceDevicesWithinService = /* @__PURE__ */ condition({
  id: "grid/source-devices-within-service",
  asks: "Do the devices of the sources stay within the rating of the service?",
  force: "requirement",
  value: { unit: "A", symbol: "I_dev", about: "sum of the ratings of the devices of the sources" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_service", about: "rating of the service" },
  source: [{ in: "NFPA 70:2017", clause: "705.12(A)", grade: "copied", seen: "NEC 2017 transcription:undated" }],
});

/** Do the output currents of the sources stay within the service conductors? @function */
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

/** Is the arrangement worked out under engineering supervision? @function */
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
