import { condition } from "../../formula/index.js";

/**
 * Does the underfrequency setting leave the band of the network code?
 *
 * @function
 * @example
 * ```ts
 * import { underfrequencyTripBelowBand } from "pv-to-grid/grid";
 * underfrequencyTripBelowBand({ value: "47.5 Hz", limit: "47.5 Hz" }).verdict; // "met"
 * ```
 */
export const underfrequencyTripBelowBand = /* @__PURE__ */ condition({
  id: "grid/underfrequency-trip-below-band",
  asks: "Does the underfrequency setting leave the band of the network code?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f_set", about: "underfrequency setting" },
  relation: "≤",
  limit: { unit: "Hz", symbol: "f_from", about: "lower end of a band in which the plant is to stay connected" },
  source: [{ in: "EU 2016/631:2016", clause: "article 13, table 2", grade: "memory" }],
});

/**
 * Does the overfrequency setting leave the band of the network code?
 *
 * @function
 * @example
 * ```ts
 * import { overfrequencyTripAboveBand } from "pv-to-grid/grid";
 * overfrequencyTripAboveBand({ value: "50.5 Hz", limit: "51 Hz" }).verdict; // "not met"
 * ```
 */
export const overfrequencyTripAboveBand = /* @__PURE__ */ condition({
  id: "grid/overfrequency-trip-above-band",
  asks: "Does the overfrequency setting leave the band of the network code?",
  force: "requirement",
  value: { unit: "Hz", symbol: "f_set", about: "overfrequency setting" },
  relation: "≥",
  limit: { unit: "Hz", symbol: "f_to", about: "upper end of a band in which the plant is to stay connected" },
  source: [{ in: "EU 2016/631:2016", clause: "article 13, table 2", grade: "memory" }],
});

/**
 * Does the setting wait as long as the plant is to stay connected?
 *
 * @function
 * @example
 * ```ts
 * import { tripWaitsForBand } from "pv-to-grid/grid";
 * tripWaitsForBand({ value: "20 s", limit: "1800 s" }).verdict; // "not met"
 * ```
 */
export const tripWaitsForBand = /* @__PURE__ */ condition({
  id: "grid/trip-waits-for-band",
  asks: "Does the setting wait as long as the plant is to stay connected?",
  force: "requirement",
  value: { unit: "s", symbol: "t_set", about: "delay or clearing time of the setting" },
  relation: "≥",
  limit: { unit: "s", symbol: "t_stay", about: "least time that the plant is to stay connected" },
  source: [{ in: "EU 2016/631:2016", clause: "article 13, table 2", grade: "memory" }],
});

/**
 * Does the undervoltage setting stay below the voltage to ride through?
 *
 * @function
 * @example
 * ```ts
 * import { undervoltageTripBelowRideThrough } from "pv-to-grid/grid";
 * undervoltageTripBelowRideThrough({ value: "0.5", limit: "0.52" }).verdict; // "met"
 * ```
 */
export const undervoltageTripBelowRideThrough = /* @__PURE__ */ condition({
  id: "grid/undervoltage-trip-below-ride-through",
  asks: "Does the undervoltage setting stay below the voltage to ride through?",
  force: "requirement",
  value: { unit: "p.u.", symbol: "u_set", about: "undervoltage setting" },
  relation: "≤",
  limit: { unit: "p.u.", symbol: "u_ride", about: "voltage to ride through" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 4 and 5", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
});

/**
 * Does the overvoltage setting stay above the voltage to ride through?
 *
 * @function
 * @example
 * ```ts
 * import { overvoltageTripAboveRideThrough } from "pv-to-grid/grid";
 * overvoltageTripAboveRideThrough({ value: "1.1", limit: "1.2" }).verdict; // "not met"
 * ```
 */
export const overvoltageTripAboveRideThrough = /* @__PURE__ */ condition({
  id: "grid/overvoltage-trip-above-ride-through",
  asks: "Does the overvoltage setting stay above the voltage to ride through?",
  force: "requirement",
  value: { unit: "p.u.", symbol: "u_set", about: "overvoltage setting" },
  relation: "≥",
  limit: { unit: "p.u.", symbol: "u_ride", about: "voltage to ride through" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 7 and 8", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
});

/**
 * Does the setting wait through the voltage to ride through?
 *
 * @function
 * @example
 * ```ts
 * import { tripWaitsForRideThrough } from "pv-to-grid/grid";
 * tripWaitsForRideThrough({ value: "21 s", limit: "9 s" }).verdict; // "met"
 * ```
 */
export const tripWaitsForRideThrough = /* @__PURE__ */ condition({
  id: "grid/trip-waits-for-ride-through",
  asks: "Does the setting wait through the voltage to ride through?",
  force: "requirement",
  value: { unit: "s", symbol: "t_set", about: "delay or clearing time of the setting" },
  relation: "≥",
  limit: { unit: "s", symbol: "t_ride", about: "least time to ride through" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 4, 5, 7 and 8", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
});
