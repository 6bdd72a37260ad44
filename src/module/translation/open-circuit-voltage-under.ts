import { formula } from "../../formula/index.js";

/**
 * Open-circuit voltage of a module at an irradiance and a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { openCircuitVoltageUnder } from "pv-to-grid/module";
 * openCircuitVoltageUnder({ openCircuitVoltage: "39.2 V", openCircuitVoltageCoefficient: "-0.26 %/K", cellTemperature: "25 °C", irradiance: "200 W/m2", diodeFactor: 1.1, cellsInSeries: 54 }).show(); // "36.74 V"
 * ```
 */
export const openCircuitVoltageUnder = /* @__PURE__ */ formula({
  id: "module/open-circuit-voltage-under",
  about: "open-circuit voltage of a module at an irradiance and a cell temperature",
  takes: {
    openCircuitVoltage: { unit: "V", symbol: "U_OC,STC", about: "open-circuit voltage at standard test conditions", above: 0, usual: [0.5, 200] },
    openCircuitVoltageCoefficient: { unit: "1/K", symbol: "β_UOC", about: "relative temperature coefficient of the open-circuit voltage", above: -0.01, below: 0, usual: [-0.006, -0.001] },
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
    irradiance: { unit: "W/m²", symbol: "G", about: "irradiance in the plane of the module", above: 0, to: 2000, usual: [1, 1500] },
    diodeFactor: { unit: "1", symbol: "n", about: "diode factor of one cell", from: 0.5, to: 5 },
    cellsInSeries: { unit: "1", symbol: "N_s", about: "cells in series in the module", from: 1, to: 1000 },
  },
  constants: {
    stcTemperature: {
      value: "25", unit: "°C", symbol: "T_STC", about: "cell temperature at standard test conditions",
      source: [
        { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
        { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" },
      ],
    },
    stcIrradiance: { value: "1000", unit: "W/m²", symbol: "G_STC", about: "irradiance at standard test conditions", source: [{ in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
    absoluteZero: { value: "-273.15", unit: "°C", symbol: "T_0", about: "absolute zero", source: [{ in: "CODATA:2018", clause: "definition of the degree Celsius", grade: "memory" }] },
    boltzmannPerCharge: { value: "0.00008617333262", unit: "V/K", symbol: "k/q", about: "Boltzmann constant over the elementary charge, both exact since 2019", source: [{ in: "CODATA:2018", clause: "k = 1.380649e-23 J/K and q = 1.602176634e-19 C", grade: "reproduced", seen: "Solar cells textbook:2024, notebooks" }] },
  },
  gives: { unit: "V", symbol: "U_OC" },
  expression: "openCircuitVoltage * (1 + openCircuitVoltageCoefficient * (cellTemperature - stcTemperature)) + diodeFactor * cellsInSeries * boltzmannPerCharge * (cellTemperature - absoluteZero) * log(irradiance / stcIrradiance)",
  source: [{ in: "Masters:2004", clause: "ideal-diode relation of voltage and irradiance", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples of the open-circuit voltage at partial irradiance with the diode factor stated" },
  note: "shunt currents neglected: real modules fall faster below about 200 W/m²",
});
