import { formula } from "../../../formula/index.js";

/**
 * Ampacity under the conditions of use.
 *
 * @function
 * @example
 * ```ts
 * import { ampacityInUse } from "pv-to-grid/conductor";
 * ampacityInUse({ tabulatedAmpacity: "40 A", temperatureFactor: "0.82", groupingFactor: "70 %" }).text; // "22.96"
 * ```
 */
export const ampacityInUse = /* @__PURE__ */ formula({
  id: "conductor/ampacity-in-use", about: "ampacity under the conditions of use",
  takes: {
    tabulatedAmpacity: { unit: "A", symbol: "I_tab", about: "tabulated ampacity in the column of the insulation", above: 0, usual: [1, 2000] },
    temperatureFactor: { unit: "1", symbol: "k_θ", about: "factor for the ambient temperature", above: 0, to: 2 },
    groupingFactor: { unit: "1", symbol: "k_g", about: "factor for the number of conductors together", above: 0, to: 1 },
  },
  gives: { unit: "A", symbol: "I_z" },
  expression: "tabulatedAmpacity * temperatureFactor * groupingFactor",
  source: [{ in: "NFPA 70:2023", clause: "310.15", grade: "copied" }],
});

/**
 * Factor for an ambient temperature other than that of the table.
 *
 * @function
 * @example
 * ```ts
 * import { ambientFactorByEquation } from "pv-to-grid/conductor";
 * ambientFactorByEquation({ conductorLimit: "90 °C", ambient: "47 °C", tableAmbient: "30 °C" }).show({ digits: 3 }); // "0.847"
 * ```
 */
export const ambientFactorByEquation = /* @__PURE__ */ formula({
  id: "conductor/ambient-factor-by-equation", about: "factor for an ambient temperature other than that of the table",
  takes: {
    conductorLimit: { unit: "°C", symbol: "θ_max", about: "temperature rating of the conductor", from: 40, to: 300 },
    ambient: { unit: "°C", symbol: "θ_a", about: "ambient temperature", from: -60, to: 250, usual: [-40, 90] },
    tableAmbient: { unit: "°C", symbol: "θ_tab", about: "ambient temperature of the table", from: 0, to: 60 },
  },
  requires: [
    { that: "ambient < conductorLimit", because: "the surroundings must be cooler than the conductor may become" },
    { that: "tableAmbient < conductorLimit", because: "the table's ambient lies below the conductor's rating" },
  ],
  gives: { unit: "1", symbol: "k_θ" },
  expression: "sqrt((conductorLimit - ambient) / (conductorLimit - tableAmbient))",
  source: [{ in: "NFPA 70:2023", clause: "equation 310.15(B)(1)", grade: "copied" }, { in: "IEC 60364-5-52:2009", clause: "law behind tables B.52.14 and B.52.15", grade: "copied" }],
  unproven: { because: "no publication found", sought: "printed factors with more digits than the tables have; the law guards their cells" },
});

/**
 * Current that a terminal's column must carry.
 *
 * @function
 * @example
 * ```ts
 * import { continuousCurrentWithMargin } from "pv-to-grid/conductor";
 * continuousCurrentWithMargin({ continuousCurrent: "11 A" }).text; // "13.75"
 * ```
 */
export const continuousCurrentWithMargin = /* @__PURE__ */ formula({
  id: "conductor/continuous-current-with-margin", about: "current that a terminal's column must carry",
  takes: { continuousCurrent: { unit: "A", symbol: "I_max", about: "maximum current of the circuit", from: 0, usual: [0, 5000] } },
  constants: {
    continuousMargin: { value: "1.25", unit: "1", symbol: "k_c", about: "margin for current that flows for three hours or more", source: [{ in: "NFPA 70:2020", clause: "690.8(B)(1)", grade: "copied" }] },
  },
  gives: { unit: "A", symbol: "1.25 I_max" },
  expression: "continuousMargin * continuousCurrent",
  source: [{ in: "NFPA 70:2020", clause: "690.8(B)(1)", grade: "copied" }],
});

/**
 * Temperature column of terminals whose rating is not marked.
 *
 * @function
 * @example
 * ```ts
 * import { unmarkedTerminalColumn } from "pv-to-grid/conductor";
 * unmarkedTerminalColumn({ circuitCurrent: "100 A" }).text; // "60"
 * ```
 */
export const unmarkedTerminalColumn = /* @__PURE__ */ formula({
  id: "conductor/unmarked-terminal-column", about: "temperature column of terminals whose rating is not marked",
  takes: { circuitCurrent: { unit: "A", symbol: "I", about: "rating of the circuit", from: 0, usual: [0, 5000] } },
  constants: {
    smallCircuit: { value: "100", unit: "A", symbol: "I_s", about: "rating up to which the lower column holds", source: [{ in: "NFPA 70:2023", clause: "110.14(C)(1)", grade: "copied" }] },
    lowerColumn: { value: "60", unit: "°C", symbol: "θ_low", about: "column of small circuits", source: [{ in: "NFPA 70:2023", clause: "110.14(C)(1)(a)", grade: "copied" }] },
    higherColumn: { value: "75", unit: "°C", symbol: "θ_high", about: "column of larger circuits", source: [{ in: "NFPA 70:2023", clause: "110.14(C)(1)(b)", grade: "copied" }] },
  },
  gives: { unit: "°C", symbol: "θ_t" },
  expression: "circuitCurrent <= smallCircuit ? lowerColumn : higherColumn",
  source: [{ in: "NFPA 70:2023", clause: "110.14(C)(1)", grade: "copied" }],
  unproven: { because: "definition" },
});

/**
 * Ampacity of a terminal's column for all conductors in parallel.
 *
 * @function
 * @example
 * ```ts
 * import { terminalColumnAmpacity } from "pv-to-grid/conductor";
 * terminalColumnAmpacity({ tabulatedAmpacity: "35 A", conductorsInParallel: 2 }).text; // "70"
 * ```
 */
export const terminalColumnAmpacity = /* @__PURE__ */ formula({
  id: "conductor/terminal-column-ampacity", about: "ampacity of a terminal's column for all conductors in parallel",
  takes: {
    tabulatedAmpacity: { unit: "A", symbol: "I_col", about: "ampacity in the column of the terminal's temperature, without factors", above: 0, usual: [1, 2000] },
    conductorsInParallel: { unit: "1", symbol: "n_p", about: "equal conductors in parallel for each line", from: 1, usual: [1, 20] },
  },
  gives: { unit: "A", symbol: "I_t" },
  expression: "tabulatedAmpacity * conductorsInParallel",
  source: [{ in: "NFPA 70:2023", clause: "110.14(C)", grade: "copied" }],
  unproven: { because: "definition" },
});
