import { formula } from "../../../formula/index.js";

/**
 * Temperature of the air around a cable behind modules.
 *
 * @function
 * @example
 * ```ts
 * import { ambientBehindModules } from "pv-to-grid/conductor";
 * ambientBehindModules({ ambient: "40 °C" }).text; // "70"
 * ```
 */
export const ambientBehindModules = /* @__PURE__ */ formula({
  id: "conductor/ambient-behind-modules", about: "temperature of the air around a cable behind modules",
  takes: { ambient: { unit: "°C", symbol: "θ_stated", about: "temperature as stated", from: -60, to: 120, usual: [-40, 90] } },
  constants: {
    leastBehindModules: { value: "70", unit: "°C", symbol: "θ_least", about: "temperature to reckon with behind modules", source: [{ in: "UTE C15-712-1:undated", clause: "cables heated by modules", grade: "memory" }] },
  },
  gives: { unit: "°C", symbol: "θ_a" },
  expression: "max(ambient, leastBehindModules)",
  source: [{ in: "UTE C15-712-1:undated", clause: "cables heated by modules", grade: "memory" }],
  unproven: { because: "no publication found", sought: "sizings of cables behind modules with their ambient" },
});

/**
 * Factor that holds a conductor of a photovoltaic cable to a temperature.
 *
 * @function
 * @example
 * ```ts
 * import { conductorLimitFactor } from "pv-to-grid/conductor";
 * conductorLimitFactor({ ambient: "75 °C", conductorLimit: "90 °C" }).text; // "0.5"
 * ```
 */
export const conductorLimitFactor = /* @__PURE__ */ formula({
  id: "conductor/conductor-limit-factor", about: "factor that holds a conductor of a photovoltaic cable to a temperature",
  takes: {
    ambient: { unit: "°C", symbol: "θ_a", about: "temperature of the air", from: -60, to: 120, usual: [-40, 90] },
    conductorLimit: { unit: "°C", symbol: "θ_max", about: "temperature that the conductor is held to", from: 60, to: 120 },
  },
  constants: {
    pvTableConductor: { value: "120", unit: "°C", symbol: "θ_tab", about: "conductor temperature of the table", source: [{ in: "EN 50618:2014", clause: "annex A, table A.3", grade: "reproduced", seen: "RR Kabel EN 50618 page:undated, thermal parameters" }] },
    pvTableAmbient: { value: "60", unit: "°C", symbol: "θ_a,tab", about: "ambient temperature of the table", source: [{ in: "EN 50618:2014", clause: "annex A, table A.3", grade: "reproduced", seen: "Yongben PV1-F page:undated, current at 60 °C" }] },
  },
  requires: [{ that: "ambient < conductorLimit", because: "the air must be cooler than the conductor may become" }],
  gives: { unit: "1", symbol: "k_lim" },
  expression: "sqrt((conductorLimit - ambient) / (pvTableConductor - pvTableAmbient))",
  source: [{ in: "IEC 60364-5-52:2009", clause: "law behind tables B.52.14 and B.52.15", grade: "copied" }],
  note: "heat grows with the square of the current, so the current goes with the root of the temperature difference",
  unproven: { because: "no publication found", sought: "worked deratings of photovoltaic cable to 90 °C" },
});

/**
 * Factor for the temperature of the air around a photovoltaic cable.
 *
 * @function
 * @example
 * ```ts
 * import { pvAmbientFactor } from "pv-to-grid/conductor";
 * pvAmbientFactor({ limitFactor: "0.5774", tableFactor: "0.92" }).text; // "0.5774"
 * ```
 */
export const pvAmbientFactor = /* @__PURE__ */ formula({
  id: "conductor/pv-ambient-factor", about: "factor for the temperature of the air around a photovoltaic cable",
  takes: {
    limitFactor: { unit: "1", symbol: "k_lim", about: "factor that holds the conductor to its limit", from: 0, to: 2 },
    tableFactor: { unit: "1", symbol: "k_tab", about: "factor of the cable's own table", from: 0, to: 1 },
  },
  gives: { unit: "1", symbol: "k_θ" },
  expression: "min(limitFactor, tableFactor)",
  source: [{ in: "common practice", clause: "plugs and terminals are no parts for 120 °C; the lower of both factors holds", grade: "common-practice" }],
  unproven: { because: "composition only" },
});
