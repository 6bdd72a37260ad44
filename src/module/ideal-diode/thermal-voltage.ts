import { formula } from "../../formula/index.js";

/**
 * Thermal voltage of a junction at a cell temperature.
 *
 * @function
 * @example
 * ```ts
 * import { thermalVoltage } from "pv-to-grid/module";
 * thermalVoltage({ cellTemperature: "25 °C" }).show(); // "0.02569 V"
 * ```
 */
export const thermalVoltage = /* @__PURE__ */ formula({
  id: "module/thermal-voltage",
  about: "thermal voltage of a junction at a cell temperature",
  takes: {
    cellTemperature: { unit: "°C", symbol: "T_c", about: "cell temperature", above: -273.15, to: 150, usual: [-50, 95] },
  },
  constants: {
    absoluteZero: { value: "-273.15", unit: "°C", symbol: "T_0", about: "absolute zero", source: [{ in: "CODATA:2018", clause: "definition of the degree Celsius", grade: "memory" }] },
    boltzmannPerCharge: { value: "0.00008617333262", unit: "V/K", symbol: "k/q", about: "Boltzmann constant over the elementary charge, both exact since 2019", source: [{ in: "CODATA:2018", clause: "k = 1.380649e-23 J/K and q = 1.602176634e-19 C", grade: "reproduced", seen: "Solar cells textbook:2024, notebooks" }] },
  },
  gives: { unit: "V", symbol: "U_T" },
  expression: "boltzmannPerCharge * (cellTemperature - absoluteZero)",
  source: [{ in: "PVEducation:undated", clause: "open-circuit voltage", grade: "memory" }],
  unproven: { because: "no publication found", sought: "printed thermal voltages with more digits than the temperature allows" },
});
