import { condition } from "../../formula/index.js";

/**
 * Is the measured voltage not below its band? @function
 *
 * @example
 * ```ts
 * import { voltageNotBelowBand } from "pv-to-grid/commissioning";
 * voltageNotBelowBand({ value: "494 V", limit: "494 V" }).verdict; // "met"
 * ```
 */
export const voltageNotBelowBand = /* @__PURE__ */ condition({
  id: "commissioning/voltage-not-below-band",
  asks: "Is the measured voltage not below its band?",
  force: "recommendation",
  value: { unit: "V", symbol: "U", about: "measured voltage" },
  relation: "≥",
  limit: { unit: "V", symbol: "U_min", about: "low end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }, { in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
});

/**
 * Is the measured voltage not above its band? @function
 *
 * @example
 * ```ts
 * import { voltageNotAboveBand } from "pv-to-grid/commissioning";
 * voltageNotAboveBand({ value: "546.1 V", limit: "546 V" }).verdict; // "not met"
 * ```
 */
export const voltageNotAboveBand = /* @__PURE__ */ condition({
  id: "commissioning/voltage-not-above-band",
  asks: "Is the measured voltage not above its band?",
  force: "recommendation",
  value: { unit: "V", symbol: "U", about: "measured voltage" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_max", about: "high end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }, { in: "Open-circuit voltage clause:undated", clause: "items d and e", grade: "copied" }],
});

/**
 * Is the measured current not below its band? @function
 *
 * @example
 * ```ts
 * import { currentNotBelowBand } from "pv-to-grid/commissioning";
 * currentNotBelowBand({ value: "10.6 A", limit: "10.64 A" }).verdict; // "not met"
 * ```
 */
export const currentNotBelowBand = /* @__PURE__ */ condition({
  id: "commissioning/current-not-below-band",
  asks: "Is the measured current not below its band?",
  force: "recommendation",
  value: { unit: "A", symbol: "I", about: "measured current" },
  relation: "≥",
  limit: { unit: "A", symbol: "I_min", about: "low end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
});

/**
 * Is the measured current not above its band? @function
 *
 * @example
 * ```ts
 * import { currentNotAboveBand } from "pv-to-grid/commissioning";
 * currentNotAboveBand({ value: "11.6 A", limit: "11.76 A" }).verdict; // "met"
 * ```
 */
export const currentNotAboveBand = /* @__PURE__ */ condition({
  id: "commissioning/current-not-above-band",
  asks: "Is the measured current not above its band?",
  force: "recommendation",
  value: { unit: "A", symbol: "I", about: "measured current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_max", about: "high end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
});

/**
 * Is the measured power not below its band? @function
 *
 * @example
 * ```ts
 * import { powerNotBelowBand } from "pv-to-grid/commissioning";
 * powerNotBelowBand({ value: "4300 W", limit: "4370 W" }).verdict; // "not met"
 * ```
 */
export const powerNotBelowBand = /* @__PURE__ */ condition({
  id: "commissioning/power-not-below-band",
  asks: "Is the measured power not below its band?",
  force: "recommendation",
  value: { unit: "W", symbol: "P", about: "measured power" },
  relation: "≥",
  limit: { unit: "W", symbol: "P_min", about: "low end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
});

/**
 * Is the measured power not above its band? @function
 *
 * @example
 * ```ts
 * import { powerNotAboveBand } from "pv-to-grid/commissioning";
 * powerNotAboveBand({ value: "4800 W", limit: "4830 W" }).verdict; // "met"
 * ```
 */
export const powerNotAboveBand = /* @__PURE__ */ condition({
  id: "commissioning/power-not-above-band",
  asks: "Is the measured power not above its band?",
  force: "recommendation",
  value: { unit: "W", symbol: "P", about: "measured power" },
  relation: "≤",
  limit: { unit: "W", symbol: "P_max", about: "high end of the band" },
  source: [{ in: "common practice", clause: "band about an expected value", grade: "common-practice" }],
});

/**
 * Is the neutral near the potential of the protective conductor? @function
 *
 * @example
 * ```ts
 * import { neutralAtEarthPotential } from "pv-to-grid/commissioning";
 * neutralAtEarthPotential({ value: "2 V", limit: "10 V" }).verdict; // "met"
 * ```
 */
export const neutralAtEarthPotential = /* @__PURE__ */ condition({
  id: "commissioning/neutral-at-earth-potential",
  asks: "Is the neutral near the potential of the protective conductor?",
  force: "recommendation",
  value: { unit: "V", symbol: "U_N-PE", about: "voltage between neutral and protective conductor" },
  relation: "≤",
  limit: { unit: "V", symbol: "U_max", about: "voltage that a sound earthed neutral shows, at most" },
  source: [{ in: "common practice", clause: "voltage between neutral and protective conductor", grade: "common-practice" }],
});

/**
 * Did the plant give at least what the irradiation lets expect, within the tolerance? @function
 *
 * @example
 * ```ts
 * import { energyNotBelowExpected } from "pv-to-grid/commissioning";
 * energyNotBelowExpected({ value: "36.4 kWh", limit: "36.27 kWh" }).verdict; // "met"
 * ```
 */
export const energyNotBelowExpected = /* @__PURE__ */ condition({
  id: "commissioning/energy-not-below-expected",
  asks: "Did the plant give at least what the irradiation lets expect, within the tolerance?",
  force: "yield",
  value: { unit: "kWh", symbol: "E", about: "measured energy" },
  relation: "≥",
  limit: { unit: "kWh", symbol: "E_min", about: "expected energy less the tolerance" },
  source: [{ in: "common practice", clause: "comparison of a day with its expected energy", grade: "common-practice" }],
});
