import { formula } from "../../formula/index.js";

/**
 * Fault current that a conductor of copper withstands for a time in NEC practice. @function
 *
 * @example
 * ```ts
 * import { nfpaCopperWithstandCurrent } from "pv-to-grid/earthing";
 * nfpaCopperWithstandCurrent({ conductorArea: "10380 cmil", disconnectionTime: "0.1 s", initialTemperature: "75 °C", finalTemperature: "150 °C" }).show(); // "1738 A"
 * ```
 */
export const nfpaCopperWithstandCurrent = /* @__PURE__ */ formula({
  id: "earthing/nfpa-copper-withstand-current",
  about: "fault current that a conductor of copper withstands for a time in NEC practice",
  takes: {
    conductorArea: { unit: "cmil", symbol: "A", about: "area of the conductor, of all parallel ones together", above: 0, usual: [1000, 20000000] },
    disconnectionTime: { unit: "s", symbol: "t", about: "time until the device has disconnected", above: 0, to: 10 },
    initialTemperature: { unit: "°C", symbol: "θ_i", about: "conductor temperature before the fault", above: -100, below: 400, usual: [-20, 200] },
    finalTemperature: { unit: "°C", symbol: "θ_f", about: "conductor temperature at the end of the fault", above: -50, to: 1600, usual: [100, 1200] },
  },
  constants: {
    nfpaCopperWithstand: {
      value: "0.0297", unit: "1", symbol: "0.0297", about: "number of the withstand formula",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    nfpaCopperInverseCoefficient: {
      value: "234", unit: "K", symbol: "234 K", about: "inverse temperature coefficient of the withstand formula",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    freezingPoint: {
      value: "0", unit: "°C", symbol: "0 °C", about: "temperature from which the reciprocal coefficient counts",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    oneAmpere: {
      value: "1", unit: "A", symbol: "1 A", about: "unit of the current",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    oneCircularMil: {
      value: "1", unit: "cmil", symbol: "1 cmil", about: "unit of the area",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    oneWithstandSecond: {
      value: "1", unit: "s", symbol: "1 s", about: "unit of the time",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
  },
  requires: [{ that: "finalTemperature > initialTemperature", because: "a fault heats the conductor" }],
  gives: { unit: "A", symbol: "I" },
  expression: "oneAmpere * conductorArea / oneCircularMil * sqrt(nfpaCopperWithstand * 2 * log((nfpaCopperInverseCoefficient + (finalTemperature - freezingPoint)) / (nfpaCopperInverseCoefficient + (initialTemperature - freezingPoint))) / log(100) * oneWithstandSecond / disconnectionTime)",
  source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
  unproven: { because: "no publication found", sought: "table 240.92(B) worked in numbers, withstand of a grounding conductor" },
});

/**
 * Fault current that a conductor of aluminium withstands for a time in NEC practice. @function
 *
 * @example
 * ```ts
 * import { nfpaAluminiumWithstandCurrent } from "pv-to-grid/earthing";
 * nfpaAluminiumWithstandCurrent({ conductorArea: "10380 cmil", disconnectionTime: "0.1 s", initialTemperature: "75 °C", finalTemperature: "150 °C" }).show(); // "1137 A"
 * ```
 */
export const nfpaAluminiumWithstandCurrent = /* @__PURE__ */ formula({
  id: "earthing/nfpa-aluminium-withstand-current",
  about: "fault current that a conductor of aluminium withstands for a time in NEC practice",
  takes: {
    conductorArea: { unit: "cmil", symbol: "A", about: "area of the conductor, of all parallel ones together", above: 0, usual: [1000, 20000000] },
    disconnectionTime: { unit: "s", symbol: "t", about: "time until the device has disconnected", above: 0, to: 10 },
    initialTemperature: { unit: "°C", symbol: "θ_i", about: "conductor temperature before the fault", above: -100, below: 400, usual: [-20, 200] },
    finalTemperature: { unit: "°C", symbol: "θ_f", about: "conductor temperature at the end of the fault", above: -50, to: 1600, usual: [100, 1200] },
  },
  constants: {
    nfpaAluminiumWithstand: {
      value: "0.0125", unit: "1", symbol: "0.0125", about: "number of the withstand formula",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    nfpaAluminiumInverseCoefficient: {
      value: "228", unit: "K", symbol: "228 K", about: "inverse temperature coefficient of the withstand formula",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    freezingPoint: {
      value: "0", unit: "°C", symbol: "0 °C", about: "temperature from which the reciprocal coefficient counts",
      source: [{ in: "IEC 60364-5-54:2011", clause: "annex A", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
    },
    oneAmpere: {
      value: "1", unit: "A", symbol: "1 A", about: "unit of the current",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    oneCircularMil: {
      value: "1", unit: "cmil", symbol: "1 cmil", about: "unit of the area",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
    oneWithstandSecond: {
      value: "1", unit: "s", symbol: "1 s", about: "unit of the time",
      source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
    },
  },
  requires: [{ that: "finalTemperature > initialTemperature", because: "a fault heats the conductor" }],
  gives: { unit: "A", symbol: "I" },
  expression: "oneAmpere * conductorArea / oneCircularMil * sqrt(nfpaAluminiumWithstand * 2 * log((nfpaAluminiumInverseCoefficient + (finalTemperature - freezingPoint)) / (nfpaAluminiumInverseCoefficient + (initialTemperature - freezingPoint))) / log(100) * oneWithstandSecond / disconnectionTime)",
  source: [{ in: "NFPA 70:2023", clause: "table 240.92(B)", grade: "copied" }],
  unproven: { because: "no publication found", sought: "table 240.92(B) worked in numbers, withstand of a grounding conductor" },
});
