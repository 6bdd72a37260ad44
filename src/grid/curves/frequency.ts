import { formula } from "../../formula/index.js";

/**
 * Active power after the frequency droop with dead bands of IEEE 1547.
 *
 * @function
 * @example
 * ```ts
 * import { frequencyDroopResponse } from "pv-to-grid/grid";
 * const settings = { nominalFrequency: "60 Hz", deadBand: "0.036 Hz", droop: "0.05", availableShare: 1 };
 * frequencyDroopResponse({ frequency: "60.336 Hz", activeShareBefore: "0.5", ...settings }).text; // "0.4"
 * ```
 */
export const frequencyDroopResponse = /* @__PURE__ */ formula({
  id: "grid/frequency-droop-response",
  about: "active power after the frequency droop with dead bands of IEEE 1547",
  takes: {
    frequency: { unit: "Hz", symbol: "f", about: "frequency", above: 0, usual: [40, 70] },
    nominalFrequency: { unit: "Hz", symbol: "f_n", about: "nominal frequency", above: 0, usual: [50, 60] },
    deadBand: { unit: "Hz", symbol: "db", about: "dead band on either side of the nominal frequency", from: 0, usual: [0, 2] },
    droop: { unit: "1", symbol: "k", about: "relative change of the frequency for a change of the power by the rated power", above: 0, usual: [0.005, 0.2] },
    activeShareBefore: { unit: "1", symbol: "p_0", about: "active power before, as a share of the rated active power", from: 0, to: 1, usual: [0, 1] },
    availableShare: { unit: "1", symbol: "p_avl", about: "active power that is available, as a share of the rated active power", from: 0, to: 1, usual: [0, 1] },
  },
  requires: [{ that: "activeShareBefore <= availableShare", because: "the plant cannot give more than is available" }],
  gives: { unit: "1", symbol: "p" },
  expression:
    "frequency > nominalFrequency + deadBand ? max(0, activeShareBefore - (frequency - nominalFrequency - deadBand) / (nominalFrequency * droop)) : frequency < nominalFrequency - deadBand ? min(availableShare, activeShareBefore + (nominalFrequency - deadBand - frequency) / (nominalFrequency * droop)) : activeShareBefore",
  source: [{ in: "IEEE 1547:2018", clause: "6.5.2.7, table 22", grade: "copied", seen: "UL1741SB test scripts:2026, FreqSupp" }],
  unproven: { because: "no publication found", sought: "tables 38 and 39 of IEEE 1547.1 in an edited publication; they were seen in copies only" },
});

/**
 * Share of the power at the start by which a plant reduces its power above a start frequency.
 *
 * @function
 * @example
 * ```ts
 * import { overfrequencyReduction } from "pv-to-grid/grid";
 * overfrequencyReduction({ frequency: "51.2 Hz", startFrequency: "50.2 Hz", frequencyDroop: "5 %", nominalFrequency: "50 Hz" }).text; // "0.4"
 * ```
 */
export const overfrequencyReduction = /* @__PURE__ */ formula({
  id: "grid/overfrequency-reduction",
  about: "share of the power at the start by which a plant reduces its power above a start frequency",
  takes: {
    frequency: { unit: "Hz", symbol: "f", about: "frequency", above: 0, usual: [40, 70] },
    startFrequency: { unit: "Hz", symbol: "f_1", about: "frequency at which the reduction starts", above: 0, usual: [50, 62] },
    frequencyDroop: { unit: "1", symbol: "s", about: "relative change of the frequency for a change of the power by the reference power", above: 0, usual: [0.005, 0.2] },
    nominalFrequency: { unit: "Hz", symbol: "f_n", about: "nominal frequency", above: 0, usual: [50, 60] },
  },
  gives: { unit: "1", symbol: "Δp" },
  expression: "frequency <= startFrequency ? 0 : min(1, (frequency - startFrequency) / (frequencyDroop * nominalFrequency))",
  source: [{ in: "EN 50549-1:2019", clause: "4.6.1", grade: "memory" }, { in: "VDE-AR-N 4105:2018", clause: "5.7.4.3", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked P(f) reduction with droop and start frequency printed" },
});

/**
 * Gradient of the power over the frequency that a droop means.
 *
 * @function
 * @example
 * ```ts
 * import { droopGradient } from "pv-to-grid/grid";
 * droopGradient({ frequencyDroop: "5 %", nominalFrequency: "50 Hz" }).text; // "40"
 * ```
 */
export const droopGradient = /* @__PURE__ */ formula({
  id: "grid/droop-gradient",
  about: "gradient of the power over the frequency that a droop means",
  takes: {
    frequencyDroop: { unit: "1", symbol: "s", about: "relative change of the frequency for a change of the power by the reference power", above: 0, usual: [0.005, 0.2] },
    nominalFrequency: { unit: "Hz", symbol: "f_n", about: "nominal frequency", above: 0, usual: [50, 60] },
  },
  constants: { wholeShare: { value: "100", unit: "%", symbol: "100 %", about: "the whole", source: [{ in: "common practice", clause: "definition", grade: "common-practice" }] } },
  gives: { unit: "%/Hz", symbol: "g" },
  expression: "wholeShare / (frequencyDroop * nominalFrequency)",
  source: [{ in: "EU 2016/631:2016", clause: "article 13, 2", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Ramp of the power that a time to full power means.
 *
 * @function
 * @example
 * ```ts
 * import { rampOfTime } from "pv-to-grid/grid";
 * rampOfTime({ rampTime: "10 min" }).text; // "10"
 * ```
 */
export const rampOfTime = /* @__PURE__ */ formula({
  id: "grid/ramp-of-time",
  about: "ramp of the power that a time to full power means",
  takes: { rampTime: { unit: "min", symbol: "t", about: "time from zero to full power", above: 0, usual: [0.01, 60] } },
  constants: { wholeShare: { value: "100", unit: "%", symbol: "100 %", about: "the whole", source: [{ in: "common practice", clause: "definition", grade: "common-practice" }] } },
  gives: { unit: "%/min", symbol: "g" },
  expression: "wholeShare / rampTime",
  source: [{ in: "AS/NZS 4777.2:2015", clause: "soft start of 6 minutes", grade: "reproduced", seen: "SEANZ on 4777.2:2016, list of major differences" }],
  unproven: { because: "definition" },
});
