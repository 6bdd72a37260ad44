import { formula } from "../../formula/index.js";

/**
 * Energy that a plant should give in a day, by its irradiation and performance ratio. @function
 *
 * @example
 * ```ts
 * import { expectedDayEnergy } from "pv-to-grid/commissioning";
 * expectedDayEnergy({ performanceRatio: "0.83", arrayPower: "10 kW", irradiation: "4.6 kWh/m2" }).text; // "38.18"
 * ```
 */
export const expectedDayEnergy = /* @__PURE__ */ formula({
  id: "commissioning/expected-day-energy",
  about: "energy that a plant should give in a day, by its irradiation and performance ratio",
  takes: {
    performanceRatio: { unit: "1", symbol: "PR", about: "performance ratio", above: 0, to: 2, usual: [0.1, 1.2] },
    arrayPower: { unit: "kW", symbol: "P_0", about: "power of the array at standard test conditions", above: 0, usual: [0.3, 100000] },
    irradiation: { unit: "kWh/m²", symbol: "H_i", about: "irradiation in the plane of the array over the period", above: 0, usual: [0.0001, 3000] },
  },
  constants: {
    referenceIrradiance: { value: "1", unit: "kW/m²", symbol: "G_ref", about: "irradiance at which the array is rated", source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }, { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "kWh", symbol: "E_day" },
  expression: "performanceRatio * arrayPower * irradiation / referenceIrradiance",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "no publication found", sought: "expected daily energy of a PV plant from measured irradiation worked example" },
  note: "without clipping, shading or export limits: what the inverter throttles is not in it",
});
