import { condition } from "../../../formula/index.js";

/**
 * Is the voltage change within the limit of the connection rules?
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeWithinLimit } from "pv-to-grid/grid";
 * voltageChangeWithinLimit({ value: "5 V", limit: "12 V" }).verdict; // "met"
 * ```
 */
export const voltageChangeWithinLimit = /* @__PURE__ */ condition({
  id: "grid/voltage-change-within-limit",
  asks: "Is the voltage change within the limit of the connection rules?",
  force: "requirement",
  value: { unit: "V", symbol: "ΔU", about: "voltage change at the place that the document names" },
  relation: "≤",
  limit: { unit: "V", symbol: "ΔU_lim", about: "limit of the document" },
  source: [
    { in: "AS/NZS 4777.1:2016", clause: "3.3.3", grade: "reproduced", seen: "NT WorkSafe voltage rise:undated" },
    { in: "VDE-AR-N 4105:2011", clause: "5.3", grade: "copied", seen: "Top50 Solar forum:undated, answer" },
    { in: "RD 1699/2011:2011", clause: "12.3", grade: "copied" },
  ],
  worse: { "supply.network.r": "up" },
});

/**
 * Is the voltage change within what is recommended?
 *
 * @function
 * @example
 * ```ts
 * import { voltageChangeWithinRecommendation } from "pv-to-grid/grid";
 * voltageChangeWithinRecommendation({ value: "5 V", limit: "12 V" }).verdict; // "met"
 * ```
 */
export const voltageChangeWithinRecommendation = /* @__PURE__ */ condition({
  id: "grid/voltage-change-within-recommendation",
  asks: "Is the voltage change within what is recommended?",
  force: "recommendation",
  value: { unit: "V", symbol: "ΔU", about: "voltage change at the place that the document names" },
  relation: "≤",
  limit: { unit: "V", symbol: "ΔU_rec", about: "value that the document recommends" },
  source: [
    { in: "Western Power inverters:2017", clause: "installer checks", grade: "original" },
    { in: "Penn State AE 868:undated", clause: "lecture on wiring, a.c. side", grade: "original" },
  ],
});

/**
 * Is the voltage at the point of supply at most the highest supply voltage?
 *
 * @function
 * @example
 * ```ts
 * import { voltageBelowHighestSupplyVoltage } from "pv-to-grid/grid";
 * voltageBelowHighestSupplyVoltage({ value: "251 V", limit: "253 V" }).verdict; // "met"
 * ```
 */
export const voltageBelowHighestSupplyVoltage = /* @__PURE__ */ condition({
  id: "grid/voltage-below-highest-supply-voltage",
  asks: "Is the voltage at the point of supply at most the highest supply voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U", about: "voltage at the point of supply with the plants feeding in" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_max", about: "highest supply voltage" },
  source: [{ in: "EN 50160:2010", clause: "4.2.2.2", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
  worse: { "supply.network.voltageWithoutPlant": "up", "supply.network.r": "up" },
});

/**
 * Is the voltage at the point of supply within the usual range?
 *
 * @function
 * @example
 * ```ts
 * import { voltageBelowUsualSupplyVoltage } from "pv-to-grid/grid";
 * voltageBelowUsualSupplyVoltage({ value: "247 V", limit: "252 V" }).verdict; // "met"
 * ```
 */
export const voltageBelowUsualSupplyVoltage = /* @__PURE__ */ condition({
  id: "grid/voltage-below-usual-supply-voltage",
  asks: "Is the voltage at the point of supply within the usual range?",
  force: "recommendation",
  value: { unit: "V", symbol: "U", about: "voltage at the point of supply with the plants feeding in" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_max", about: "highest voltage of the usual range" },
  source: [{ in: "ANSI C84.1:2020", clause: "table 1, range A", grade: "memory" }],
  worse: { "supply.network.voltageWithoutPlant": "up", "supply.network.r": "up" },
});

/**
 * Is the voltage without the plant at least the lowest supply voltage?
 *
 * @function
 * @example
 * ```ts
 * import { voltageAboveLowestSupplyVoltage } from "pv-to-grid/grid";
 * voltageAboveLowestSupplyVoltage({ value: "228 V", limit: "207 V" }).verdict; // "met"
 * ```
 */
export const voltageAboveLowestSupplyVoltage = /* @__PURE__ */ condition({
  id: "grid/voltage-above-lowest-supply-voltage",
  asks: "Is the voltage without the plant at least the lowest supply voltage?",
  force: "requirement",
  value: { unit: "V", symbol: "U_0", about: "voltage without the plant" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_min", about: "lowest supply voltage" },
  source: [{ in: "EN 50160:2010", clause: "4.2.2.2", grade: "reproduced", seen: "VDE Kassel lecture:undated, body" }],
  note: "a voltage outside the band without the plant is the network operator's to mend",
  worse: { "supply.network.voltageWithoutPlant": "down" },
});

/**
 * Does the voltage at the inverter terminals stay below the sustained overvoltage setting?
 *
 * @function
 * @example
 * ```ts
 * import { terminalVoltageBelowTripSetting } from "pv-to-grid/grid";
 * terminalVoltageBelowTripSetting({ value: "254 V", limit: "253 V" }).verdict; // "not met"
 * ```
 */
export const terminalVoltageBelowTripSetting = /* @__PURE__ */ condition({
  id: "grid/terminal-voltage-below-trip-setting",
  asks: "Does the voltage at the inverter terminals stay below the sustained overvoltage setting?",
  force: "yield",
  value: { unit: "V", symbol: "U_inv", about: "voltage at the inverter terminals with the plants feeding in" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_trip", about: "sustained overvoltage setting" },
  source: [{ in: "common practice", clause: "overvoltage trips at high infeed", grade: "common-practice" }],
  note: "where it does not, the inverter disconnects on sunny days with little load: thicker cable, less resistance, or absorbing reactive power",
  worse: { "supply.network.voltageWithoutPlant": "up", "supply.network.r": "up" },
});
