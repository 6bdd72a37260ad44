import { type Check, choose, condition, formula, type Known, isMissing, type Series } from "../../formula/index.js";
import { nfpa70_2017_240_6_fuses, nfpa70_2020_240_6_fuses, nfpa70_2023_240_6_fuses } from "../../device/index.js";
import type { Input } from "../../quantity/index.js";
import { continuousCurrent } from "./continuous-current.js";
import type { NecRules } from "../rules.js";

/** Does the conductor, before correction and at the temperature of its terminals, carry 125 % of the maximum current? @function */
export const terminalAmpacitySuffices = /* @__PURE__ */ condition({
  id: "string/terminal-ampacity-suffices",
  asks: "Does the conductor, before correction and at the temperature of its terminals, carry 125 % of the maximum current?",
  force: "requirement",
  value: { unit: "A", symbol: "1.25 I_max", about: "125 % of the maximum current, 156 % of the short-circuit current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z,term", about: "tabulated ampacity in the column of the terminals" },
  source: [
    { in: "NFPA 70:2014", clause: "690.8(B)(1)", grade: "reproduced", seen: "Home Power circuit sizing:undated, three-string example" },
    { in: "NFPA 70:2020", clause: "690.8(B)(1)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B)" },
  ],
  worse: { "moduleTypes[].shortCircuitCurrent": "up" },
});

/** Does the conductor, after correction for heat and number, carry the maximum current? @function */
export const correctedAmpacitySuffices = /* @__PURE__ */ condition({
  id: "string/corrected-ampacity-suffices",
  asks: "Does the conductor, after correction for heat and number, carry the maximum current?",
  force: "requirement",
  value: { unit: "A", symbol: "I_max", about: "maximum current, 125 % of the short-circuit current" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_z,corr", about: "ampacity after the factors for ambient and number of conductors" },
  source: [
    { in: "NFPA 70:2014", clause: "690.8(B)(2)", grade: "reproduced", seen: "EC&M article 690 part 3:undated, summary of 690.8(B)" },
    { in: "NFPA 70:2020", clause: "690.8(B)(2)", grade: "copied", seen: "California Electrical Code:2022, 690.8(B)" },
  ],
  worse: { "moduleTypes[].shortCircuitCurrent": "up", "routes[].stretches[].ambient": "up", "routes[].stretches[].grouped": "up" },
  note: "no second 125 %: a permit sheet that asks for 156 % of corrected ampacity is stricter than the code",
});

/** Does the device protect the corrected conductor, the next standard rating included? @function */
export const deviceProtectsConductor = /* @__PURE__ */ condition({
  id: "string/device-protects-conductor",
  asks: "Does the device protect the corrected conductor, the next standard rating included?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n,max", about: "corrected ampacity, or the next standard rating above it up to 800 A" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(B) and (C)", grade: "copied", seen: "California Electrical Code:2022, 240.4" }],
});

/** Is the device within the limit for small conductors? @function */
export const deviceWithinSmallConductorLimit = /* @__PURE__ */ condition({
  id: "string/device-within-small-conductor-limit",
  asks: "Is the device within the limit for small conductors?",
  force: "requirement",
  value: { unit: "A", symbol: "I_n", about: "rated current of the device" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_small", about: "limit of 240.4(D) for the conductor's size" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(D)", grade: "copied", seen: "California Electrical Code:2022, 240.4(D)" }],
});

/** Is the corrected ampacity within a standard rating? @function */
export const ampacityWithinStandardRating = /* @__PURE__ */ condition({
  id: "string/ampacity-within-standard-rating",
  asks: "Is the corrected ampacity within a standard rating?",
  force: "requirement",
  value: { unit: "A", symbol: "I_z,corr", about: "corrected ampacity" },
  relation: "≤",
  limit: { unit: "A", symbol: "I_n", about: "standard rating" },
  source: [{ in: "NFPA 70:2020", clause: "240.4(B)", grade: "copied", seen: "California Electrical Code:2022, 240.4" }],
  note: "finds the next standard rating, which the device may have",
});

const seriesOf: Readonly<Record<NecRules, Series<"A">>> = {
  "NFPA 70:2017": nfpa70_2017_240_6_fuses,
  "NFPA 70:2020": nfpa70_2020_240_6_fuses,
  "NFPA 70:2023": nfpa70_2023_240_6_fuses,
};

/**
 * Largest device that protects a conductor: the next standard rating, where that may be taken. @function
 *
 * @example
 * ```ts
 * import { largestDeviceFor } from "pv-to-grid/string";
 * largestDeviceFor({ correctedAmpacity: "29.12 A", nextRating: "30 A" }).text; // "30"
 * ```
 */
export const largestDeviceFor = /* @__PURE__ */ formula({
  id: "string/largest-device-for",
  about: "largest device that protects a conductor: the next standard rating, where that may be taken",
  takes: {
    correctedAmpacity: { unit: "A", symbol: "I_z,corr", about: "corrected ampacity of the conductor", above: 0, usual: [1, 5000] },
    nextRating: { unit: "A", symbol: "I_n+", about: "smallest standard rating that is not below the ampacity", above: 0, usual: [1, 6000] },
  },
  constants: {
    reach: {
      value: "800", unit: "A", symbol: "800 A", about: "rating up to which the next standard one may be taken",
      source: [{ in: "NFPA 70:2020", clause: "240.4(B)", grade: "copied", seen: "California Electrical Code:2022, 240.4" }],
    },
  },
  gives: { unit: "A", symbol: "I_n,max" },
  expression: "nextRating <= reach ? nextRating : correctedAmpacity",
  source: [{ in: "NFPA 70:2020", clause: "240.4(B) and (C)", grade: "copied", seen: "California Electrical Code:2022, 240.4" }],
  unproven: { because: "no publication found", sought: "240.4(B) next standard rating 800 A worked example PV" },
});

/** A d.c. conductor and its device under the NEC. */
export interface NecConductor {
  readonly at?: string;
  readonly rules: NecRules;
  /** By 690.8(A): 125 % of the short-circuit current. */
  readonly maximumCurrent: Input<"current">;
  /** Tabulated ampacity in the column of the terminals' temperature, without factors. */
  readonly terminalAmpacity: Known<Input<"current">>;
  /** Ampacity in the insulation's column times the factors for ambient and number. */
  readonly correctedAmpacity: Known<Input<"current">>;
  /** Rated current of the device; left out where there is none. */
  readonly device?: Known<Input<"current">>;
  /** Limit of 240.4(D) for 14, 12 and 10 AWG; left out for larger conductors. */
  readonly smallConductorLimit?: Input<"current">;
}

/**
 * The separate checks of a d.c. conductor under the NEC: 156 % of the short-circuit current before correction at the
 * terminals, 125 % after correction, and the device against the corrected conductor.
 *
 * @example
 * ```ts
 * import { necConductorChecks } from "pv-to-grid/string";
 * necConductorChecks({ rules: "NFPA 70:2020", maximumCurrent: "17.3375 A", terminalAmpacity: "35 A", correctedAmpacity: "29.12 A", device: "30 A" }).map((check) => check.verdict).join(); // "met,met,met"
 * ```
 */
export function necConductorChecks(input: NecConductor): readonly Check[] {
  const { at = "", rules, maximumCurrent, terminalAmpacity, correctedAmpacity, device, smallConductorLimit } = input;
  const checks = [
    terminalAmpacitySuffices({ value: continuousCurrent({ maximumCurrent }), limit: terminalAmpacity, at }),
    correctedAmpacitySuffices({ value: maximumCurrent, limit: correctedAmpacity, at }),
  ];
  if (device === undefined) return Object.freeze(checks);
  const limit = isMissing(correctedAmpacity) ? correctedAmpacity : largestDevice(rules, correctedAmpacity);
  checks.push(deviceProtectsConductor({ value: device, limit, at }));
  if (smallConductorLimit !== undefined)
    checks.push(deviceWithinSmallConductorLimit({ value: device, limit: smallConductorLimit, at }));
  return Object.freeze(checks);
}

// 240.4(B): the next standard rating serves up to 800 A; above, 240.4(C) asks for the ampacity itself.
function largestDevice(rules: NecRules, correctedAmpacity: Input<"current">): Input<"current"> {
  const next = choose(seriesOf[rules], (rating) => [
    ampacityWithinStandardRating({ value: correctedAmpacity, limit: rating }),
  ]).chosen;
  return next === null ? correctedAmpacity : largestDeviceFor({ correctedAmpacity, nextRating: next });
}
