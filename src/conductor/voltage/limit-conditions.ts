import { condition } from "../../formula/index.js";

/**
 * Is the voltage drop from the origin of the installation within the limit of annex G?
 *
 * @function
 */
export const dropWithinAnnexG = /* @__PURE__ */ condition({
  id: "conductor/drop-within-annex-g", asks: "Is the voltage drop from the origin of the installation within the limit of annex G?", force: "recommendation",
  value: { unit: "%", symbol: "Δu", about: "drop from the origin of the installation to the load, at design current" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, table G.52.1", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, table" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop from the origin of the installation within the limit of BS 7671?
 *
 * @function
 */
export const dropWithinBs7671 = /* @__PURE__ */ condition({
  id: "conductor/drop-within-bs7671", asks: "Is the voltage drop from the origin of the installation within the limit of BS 7671?", force: "recommendation",
  value: { unit: "%", symbol: "Δu", about: "drop from the origin of the installation to the load, at design current" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.4", grade: "reproduced", seen: "Linsley:undated, p. 302" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop from the point of supply within 5 %?
 *
 * @function
 */
export const dropWithinAsNzs3000 = /* @__PURE__ */ condition({
  id: "conductor/drop-within-as-nzs3000", asks: "Is the voltage drop from the point of supply within 5 %?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "drop from the point of supply to the point of use" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "AS/NZS 3000:2018", clause: "3.6.2", grade: "memory" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage rise from the point of supply to the inverter terminals within 2 %?
 *
 * @function
 */
export const riseWithinAsNzs4777 = /* @__PURE__ */ condition({
  id: "conductor/rise-within-as-nzs4777", asks: "Is the voltage rise from the point of supply to the inverter terminals within 2 %?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "rise by the rated current of all inverters of the installation" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "AS/NZS 4777.1:2016", clause: "3.3.3", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item III" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage rise at the connection point by all generators of the low-voltage network within 3 %?
 *
 * @function
 */
export const riseWithinVde4105 = /* @__PURE__ */ condition({
  id: "conductor/rise-within-vde4105", asks: "Is the voltage rise at the connection point by all generators of the low-voltage network within 3 %?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "rise at the connection point by all generators of the network, against none feeding" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "VDE-AR-N 4105:2018", clause: "voltage change", grade: "memory" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage change from the generator to its connection within 1.5 %?
 *
 * @function
 */
export const changeWithinRebt = /* @__PURE__ */ condition({
  id: "conductor/change-within-rebt", asks: "Is the voltage change from the generator to its connection within 1.5 %?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "change at the nominal current of the generator" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-40, 5", grade: "copied" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop inside the installation within the limit of the Spanish regulation?
 *
 * @function
 */
export const dropWithinRebt = /* @__PURE__ */ condition({
  id: "conductor/drop-within-rebt", asks: "Is the voltage drop inside the installation within the limit of the Spanish regulation?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "drop from the origin of the installation to the point of use" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "REBT:2002", clause: "ITC-BT-19, 2.2.2", grade: "copied" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop within the informational note of NFPA 70?
 *
 * @function
 */
export const dropWithinNfpa70 = /* @__PURE__ */ condition({
  id: "conductor/drop-within-nfpa70", asks: "Is the voltage drop within the informational note of NFPA 70?", force: "recommendation",
  value: { unit: "%", symbol: "Δu", about: "drop at the load of the branch circuit or feeder" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "NFPA 70:2017", clause: "210.19(A)(1) informational note 4, 215.2(A)(1) informational note 2", grade: "copied" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop from the array to the inverter within common practice?
 *
 * @function
 */
export const directDropWithinPractice = /* @__PURE__ */ condition({
  id: "conductor/direct-drop-within-practice", asks: "Is the voltage drop from the array to the inverter within common practice?", force: "recommendation",
  value: { unit: "%", symbol: "Δu", about: "drop on the d.c. side at the current at maximum power" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "Penn State AE 868:undated", clause: "voltage drop", grade: "original" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage change from the inverter to the meter within common practice?
 *
 * @function
 */
export const alternatingDropWithinPractice = /* @__PURE__ */ condition({
  id: "conductor/alternating-drop-within-practice", asks: "Is the voltage change from the inverter to the meter within common practice?", force: "recommendation",
  value: { unit: "%", symbol: "Δu", about: "change on the a.c. side at the rated current" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "Penn State AE 868:undated", clause: "voltage drop", grade: "original" }],
  worse: { "routes[].stretches[].length": "up" },
});

/**
 * Is the voltage drop from the array to the inverter within the limit of the scheme?
 *
 * @function
 */
export const directDropWithinMcs = /* @__PURE__ */ condition({
  id: "conductor/direct-drop-within-mcs", asks: "Is the voltage drop from the array to the inverter within the limit of the scheme?", force: "requirement",
  value: { unit: "%", symbol: "Δu", about: "drop on the d.c. side at standard test conditions" }, relation: "≤",
  limit: { unit: "%", symbol: "Δu_max", about: "largest voltage change" },
  source: [{ in: "MCS guide:2012", clause: "d.c. cables", grade: "memory" }],
  worse: { "routes[].stretches[].length": "up" },
});
