import { formula } from "../../formula/index.js";

/**
 * Voltage change from a tabulated change per ampere and metre.
 *
 * @function
 * @example
 * ```ts
 * import { dropByTable } from "pv-to-grid/conductor";
 * dropByTable({ tabulatedDrop: "1.1 mV/A/m", current: "100 A", length: "150 m" }).in("V").text; // "16.5"
 * ```
 */
export const dropByTable = /* @__PURE__ */ formula({
  id: "conductor/drop-by-table", about: "voltage change from a tabulated change per ampere and metre",
  takes: {
    tabulatedDrop: { unit: "mV/(A·m)", symbol: "v", about: "tabulated change; it holds all conductors of the circuit, so the length is never doubled", above: 0, usual: [0.01, 200] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
  },
  gives: { unit: "mV", symbol: "ΔU" },
  expression: "tabulatedDrop * current * length",
  source: [{ in: "CSE Distributors voltage drop page:undated", clause: "three-phase example", grade: "original" }],
});

/**
 * Largest tabulated change per ampere and metre for a voltage change.
 *
 * @function
 * @example
 * ```ts
 * import { tabulatedDropAllowed } from "pv-to-grid/conductor";
 * tabulatedDropAllowed({ voltageChange: "10.5 V", current: "100 A", length: "150 m" }).text; // "0.7"
 * ```
 */
export const tabulatedDropAllowed = /* @__PURE__ */ formula({
  id: "conductor/tabulated-drop-allowed", about: "largest tabulated change per ampere and metre for a voltage change",
  takes: {
    voltageChange: { unit: "mV", symbol: "ΔU", about: "largest voltage change", above: 0, usual: [10, 100000] },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
  },
  requires: [{ that: "current > 0", because: "without current nothing drops" }],
  gives: { unit: "mV/(A·m)", symbol: "v" },
  expression: "voltageChange / (current * length)",
  source: [{ in: "CSE Distributors voltage drop page:undated", clause: "three-phase example", grade: "original" }],
});

/**
 * Tabulated change at a power factor from its resistive and reactive parts.
 *
 * @function
 * @example
 * ```ts
 * import { tabulatedDropByParts } from "pv-to-grid/conductor";
 * tabulatedDropByParts({ tabulatedResistive: "1.1 mV/A/m", tabulatedReactive: "0.17 mV/A/m", powerFactor: "0.8", reactiveFactor: "0.6" }).text; // "0.982"
 * ```
 */
export const tabulatedDropByParts = /* @__PURE__ */ formula({
  id: "conductor/tabulated-drop-by-parts", about: "tabulated change at a power factor from its resistive and reactive parts",
  takes: {
    tabulatedResistive: { unit: "mV/(A·m)", symbol: "r", about: "resistive part", from: 0, usual: [0.01, 200] },
    tabulatedReactive: { unit: "mV/(A·m)", symbol: "x", about: "reactive part", from: 0, usual: [0, 5] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
  },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  expression: "tabulatedResistive * powerFactor + tabulatedReactive * reactiveFactor",
  source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.2", grade: "memory" }],
  unproven: { because: "no publication found", sought: "changes by resistive and reactive part with both factors" },
});

/**
 * Factor on the resistive part for a conductor that stays cooler than its limit.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_temperatureCorrection } from "pv-to-grid/conductor";
 * bs7671_2018_temperatureCorrection({ conductorLimit: "70 °C", temperatureFactor: 1, groupingFactor: 1, current: "20 A", tabulatedAmpacity: "40 A" }).text; // "0.9"
 * ```
 */
export const bs7671_2018_temperatureCorrection = /* @__PURE__ */ formula({
  id: "conductor/bs-7671-2018-temperature-correction", about: "factor on the resistive part for a conductor that stays cooler than its limit",
  takes: {
    conductorLimit: { unit: "°C", symbol: "θ_max", about: "temperature that the table holds for", from: 60, to: 200 },
    temperatureFactor: { unit: "1", symbol: "C_a", about: "factor for the ambient", above: 0, to: 1.3 },
    groupingFactor: { unit: "1", symbol: "C_g", about: "factor for the group", above: 0, to: 1 },
    current: { unit: "A", symbol: "I_b", about: "design current", from: 0, usual: [0, 5000] },
    tabulatedAmpacity: { unit: "A", symbol: "I_t", about: "tabulated current-carrying capacity", above: 0, usual: [1, 2000] },
  },
  constants: {
    zeroResistance: { value: "-230", unit: "°C", symbol: "θ_0", about: "temperature at which the law lets resistance vanish", source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.1", grade: "memory" }] },
    bsTableAmbient: { value: "30", unit: "°C", symbol: "θ_a", about: "ambient of the tables", source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.1", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "C_t" },
  expression: "(conductorLimit - zeroResistance - (temperatureFactor ^ 2 * groupingFactor ^ 2 - current ^ 2 / tabulatedAmpacity ^ 2) * (conductorLimit - bsTableAmbient)) / (conductorLimit - zeroResistance)",
  source: [{ in: "BS 7671:2018", clause: "appendix 4, 6.1", grade: "memory" }],
  note: "for devices other than semi-enclosed fuses and an ambient of 30 °C and more",
  unproven: { because: "no publication found", sought: "worked temperature corrections of voltage drop under BS 7671" },
});
