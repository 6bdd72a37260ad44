import { formula } from "../../formula/index.js";

/**
 * Voltage change after annex G.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_annexG } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_annexG({ conductorFactor: 2, serviceResistivity: "0.0225 Ω·mm²/m", length: "80 m", section: "25 mm2", powerFactor: 1, reactancePerLength: "0.08 Ω/km", reactiveFactor: 0, current: "32 A" }).text; // "4.608"
 * ```
 */
export const iec60364_5_52_2009_annexG = /* @__PURE__ */ formula({
  id: "conductor/iec-60364-5-52-2009-annex-g", about: "voltage change after annex G",
  takes: {
    conductorFactor: { unit: "1", symbol: "b", about: "1 for three phases, 2 for two conductors", from: 1, to: 2 },
    serviceResistivity: { unit: "Ω·mm²/m", symbol: "ρ_1", about: "resistivity in normal service", above: 0, usual: [0.015, 0.05] },
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    section: { unit: "mm²", symbol: "S", about: "cross-section of the conductor", above: 0, usual: [0.5, 1000] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    reactancePerLength: { unit: "Ω/m", symbol: "X", about: "reactance per length of one conductor", from: 0, usual: [0, 0.001] },
    reactiveFactor: { unit: "1", symbol: "sin φ", about: "share of the current that carries reactive power, positive where reactive power flows the same way as active power", from: -1, to: 1 },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
  },
  gives: { unit: "V", symbol: "u" },
  expression: "conductorFactor * (serviceResistivity * length / section * powerFactor + reactancePerLength * length * reactiveFactor) * current",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex G", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, annex G" }],
  note: "for three phases the line-to-neutral change",
  unproven: { because: "no publication found", sought: "worked voltage drops by annex G with reactance" },
});

/**
 * Resistivity of a conductor in normal service.
 *
 * @function
 * @example
 * ```ts
 * import { serviceResistivity } from "pv-to-grid/conductor";
 * serviceResistivity({ resistivityAt20: "0.018 Ω·mm²/m" }).text; // "0.0225"
 * ```
 */
export const serviceResistivity = /* @__PURE__ */ formula({
  id: "conductor/service-resistivity", about: "resistivity of a conductor in normal service",
  takes: {
    resistivityAt20: { unit: "Ω·mm²/m", symbol: "ρ_20", about: "resistivity at 20 °C", above: 0, usual: [0.015, 0.04] },
  },
  constants: {
    serviceRise: { value: "1.25", unit: "1", symbol: "k", about: "service over 20 °C", source: [{ in: "IEC 60364-5-52:2009", clause: "annex G", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, annex G" }] },
  },
  gives: { unit: "Ω·mm²/m", symbol: "ρ_1" },
  expression: "serviceRise * resistivityAt20",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex G", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, annex G" }],
});

/**
 * Cross-section that a voltage change needs, without reactance.
 *
 * @function
 * @example
 * ```ts
 * import { sectionForDrop } from "pv-to-grid/conductor";
 * sectionForDrop({ conductorFactor: 2, serviceResistivity: "0.0231375 Ω·mm²/m", length: "80 m", powerFactor: 1, current: "32 A", nominalVoltage: "230 V", dropLimit: "3 %" }).show(); // "17.17 mm²"
 * ```
 */
export const sectionForDrop = /* @__PURE__ */ formula({
  id: "conductor/section-for-drop", about: "cross-section that a voltage change needs, without reactance",
  takes: {
    conductorFactor: { unit: "1", symbol: "b", about: "1 for three phases against line to neutral, 2 for two conductors", from: 1, to: 2 },
    serviceResistivity: { unit: "Ω·mm²/m", symbol: "ρ_1", about: "resistivity in normal service", above: 0, usual: [0.015, 0.05] },
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
    powerFactor: { unit: "1", symbol: "cos φ", about: "share of the current that carries active power", from: 0, to: 1 },
    current: { unit: "A", symbol: "I", about: "current", from: 0, usual: [0, 5000] },
    nominalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between the same conductors", above: 0, usual: [12, 1500] },
    dropLimit: { unit: "1", symbol: "ε", about: "largest change as a share of the nominal voltage", above: 0, to: 1, usual: [0.001, 0.2] },
  },
  gives: { unit: "mm²", symbol: "S" },
  expression: "conductorFactor * serviceResistivity * length * powerFactor * current / (dropLimit * nominalVoltage)",
  source: [{ in: "GuidEnR AC cable page:undated", clause: "single-phase example", grade: "original" }],
});
