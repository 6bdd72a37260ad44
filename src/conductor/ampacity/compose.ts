import { formula } from "../../formula/index.js";

/**
 * Ampacity of a cable in air as it is laid.
 *
 * @function
 * @example
 * ```ts
 * import { ampacityInAir } from "pv-to-grid/conductor";
 * ampacityInAir({ tabulatedAmpacity: "57 A", temperatureFactor: "0.87", groupingFactor: "0.8" }).text; // "39.672"
 * ```
 */
export const ampacityInAir = /* @__PURE__ */ formula({
  id: "conductor/ampacity-in-air", about: "ampacity of a cable in air as it is laid",
  takes: {
    tabulatedAmpacity: { unit: "A", symbol: "I_tab", about: "tabulated current-carrying capacity", above: 0, usual: [1, 2000] },
    temperatureFactor: { unit: "1", symbol: "k_θ", about: "factor for the temperature of the air", above: 0, to: 2 },
    groupingFactor: { unit: "1", symbol: "k_g", about: "factor for the group of circuits", above: 0, to: 1 },
  },
  gives: { unit: "A", symbol: "I_z" },
  expression: "tabulatedAmpacity * temperatureFactor * groupingFactor",
  source: [{ in: "IEC 60364-5-52:2009", clause: "523 and annex B", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked sizings that print capacity, temperature factor and grouping factor together" },
});

/**
 * Ampacity of a cable in the ground as it is laid.
 *
 * @function
 * @example
 * ```ts
 * import { ampacityInGround } from "pv-to-grid/conductor";
 * ampacityInGround({ tabulatedAmpacity: "100 A", temperatureFactor: 1, soilFactor: "1.18", groupingFactor: "0.85" }).text; // "100.3"
 * ```
 */
export const ampacityInGround = /* @__PURE__ */ formula({
  id: "conductor/ampacity-in-ground", about: "ampacity of a cable in the ground as it is laid",
  takes: {
    tabulatedAmpacity: { unit: "A", symbol: "I_tab", about: "tabulated current-carrying capacity", above: 0, usual: [1, 2000] },
    temperatureFactor: { unit: "1", symbol: "k_θ", about: "factor for the temperature of the ground", above: 0, to: 2 },
    soilFactor: { unit: "1", symbol: "k_s", about: "factor for the thermal resistivity of the soil", above: 0, to: 2 },
    groupingFactor: { unit: "1", symbol: "k_g", about: "factor for the group of circuits", above: 0, to: 1 },
  },
  gives: { unit: "A", symbol: "I_z" },
  expression: "tabulatedAmpacity * temperatureFactor * soilFactor * groupingFactor",
  source: [{ in: "IEC 60364-5-52:2009", clause: "523 and annex B", grade: "copied" }],
  unproven: { because: "no publication found", sought: "worked sizings of buried cables" },
});

/**
 * Ampacity of equal conductors in parallel.
 *
 * @function
 * @example
 * ```ts
 * import { ampacityOfParallel } from "pv-to-grid/conductor";
 * ampacityOfParallel({ ampacity: "167 A", conductorsInParallel: 2 }).text; // "334"
 * ```
 */
export const ampacityOfParallel = /* @__PURE__ */ formula({
  id: "conductor/ampacity-of-parallel", about: "ampacity of equal conductors in parallel",
  takes: {
    ampacity: { unit: "A", symbol: "I_z,1", about: "ampacity of one of them in the group", above: 0, usual: [1, 5000] },
    conductorsInParallel: { unit: "1", symbol: "n_p", about: "equal conductors in parallel for each line", from: 1, usual: [1, 20] },
  },
  gives: { unit: "A", symbol: "I_z" },
  expression: "ampacity * conductorsInParallel",
  source: [
    { in: "IEC 60364-5-52:2009", clause: "523.7", grade: "memory" },
    { in: "common practice", clause: "equal conductors of equal length share the current equally", grade: "common-practice" },
  ],
  note: "equal material, section and length, without branches",
  unproven: { because: "definition" },
});

/**
 * Ampacity of the lines of a cable whose neutral carries third harmonics.
 *
 * @function
 * @example
 * ```ts
 * import { ampacityWithHarmonics } from "pv-to-grid/conductor";
 * ampacityWithHarmonics({ ampacity: "100 A", thirdHarmonicShare: "20 %" }).text; // "86"
 * ```
 */
export const ampacityWithHarmonics = /* @__PURE__ */ formula({
  id: "conductor/ampacity-with-harmonics", about: "ampacity of the lines of a cable whose neutral carries third harmonics",
  takes: {
    ampacity: { unit: "A", symbol: "I_z", about: "ampacity without harmonics", above: 0, usual: [1, 5000] },
    thirdHarmonicShare: { unit: "1", symbol: "h_3", about: "third harmonic as a share of the line current", from: 0, to: 1, usual: [0, 1] },
  },
  constants: {
    unaffected: { value: "0.15", unit: "1", symbol: "h_a", about: "share up to which the neutral counts as unloaded", source: [{ in: "IEC 60364-5-52:2009", clause: "annex E, table E.52.1", grade: "memory" }] },
    linesGovern: { value: "0.33", unit: "1", symbol: "h_b", about: "share up to which the line current is decisive", source: [{ in: "IEC 60364-5-52:2009", clause: "annex E, table E.52.1", grade: "memory" }] },
    neutralAlone: { value: "0.45", unit: "1", symbol: "h_c", about: "share above which the neutral alone heats the cable", source: [{ in: "IEC 60364-5-52:2009", clause: "annex E, table E.52.1", grade: "memory" }] },
    fourLoaded: { value: "0.86", unit: "1", symbol: "k_n", about: "factor for four loaded conductors", source: [{ in: "IEC 60364-5-52:2009", clause: "annex E, table E.52.1", grade: "memory" }] },
  },
  gives: { unit: "A", symbol: "I_z,h" },
  expression: "thirdHarmonicShare <= unaffected ? ampacity : thirdHarmonicShare <= linesGovern ? fourLoaded * ampacity : thirdHarmonicShare <= neutralAlone ? fourLoaded * ampacity / (3 * thirdHarmonicShare) : ampacity / (3 * thirdHarmonicShare)",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex E", grade: "memory" }],
  note: "above 33 % the neutral current, three times the third harmonic, decides; the result is the line current at which the neutral is full",
  unproven: { because: "no publication found", sought: "worked sizings with a loaded neutral under IEC 60364-5-52 annex E" },
});

/**
 * Circuits that heat each other.
 *
 * @function
 * @example
 * ```ts
 * import { circuitsTogether } from "pv-to-grid/conductor";
 * circuitsTogether({ grouped: 2, conductorsInParallel: 1 }).text; // "3"
 * ```
 */
export const circuitsTogether = /* @__PURE__ */ formula({
  id: "conductor/circuits-together", about: "circuits that heat each other",
  takes: {
    grouped: { unit: "1", symbol: "n_o", about: "other circuits beside it", from: 0, usual: [0, 100] },
    conductorsInParallel: { unit: "1", symbol: "n_p", about: "equal conductors in parallel for each line; each set counts as a circuit", from: 1, usual: [1, 20] },
  },
  gives: { unit: "1", symbol: "n" },
  expression: "grouped + conductorsInParallel",
  source: [
    { in: "IEC 60364-5-52:2009", clause: "annex B, notes to table B.52.17: circuits or multi-core cables are counted", grade: "copied" },
    { in: "IEC 60364-5-52:2009", clause: "523.5 and 523.7: parallel sets", grade: "memory" },
  ],
  unproven: { because: "definition" },
});

/**
 * Circuits of a single layer that count.
 *
 * @function
 * @example
 * ```ts
 * import { circuitsOfLayer } from "pv-to-grid/conductor";
 * circuitsOfLayer({ circuits: 12 }).text; // "9"
 * ```
 */
export const circuitsOfLayer = /* @__PURE__ */ formula({
  id: "conductor/circuits-of-layer", about: "circuits of a single layer that count",
  takes: { circuits: { unit: "1", symbol: "n", about: "circuits beside each other", from: 1, usual: [1, 100] } },
  constants: {
    layerLimit: { value: "9", unit: "1", symbol: "n_max", about: "circuits beyond which a single layer needs no further reduction", source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.17, rows 2 to 5", grade: "copied" }] },
  },
  gives: { unit: "1", symbol: "n_c" },
  expression: "min(circuits, layerLimit)",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.17, rows 2 to 5", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Factor for a group of cables of different sizes in a conduit or trunking or on a tray.
 *
 * @function
 * @example
 * ```ts
 * import { unequalGroupFactor } from "pv-to-grid/conductor";
 * unequalGroupFactor({ circuits: 4 }).text; // "0.5"
 * ```
 */
export const unequalGroupFactor = /* @__PURE__ */ formula({
  id: "conductor/unequal-group-factor", about: "factor for a group of cables of different sizes in a conduit or trunking or on a tray",
  takes: { circuits: { unit: "1", symbol: "n", about: "circuits or multi-core cables in the group", from: 1, usual: [1, 100] } },
  gives: { unit: "1", symbol: "F" },
  expression: "1 / sqrt(circuits)",
  source: [{ in: "IEC 60364-5-52:2009", clause: "B.52.5.2", grade: "memory" }],
  note: "for sizes that span more than three adjacent standard sections",
  unproven: { because: "no publication found", sought: "worked groups of unequal cables under IEC 60364-5-52 B.52.5" },
});
