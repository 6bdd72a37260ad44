import { formula } from "../../formula/index.js";

/**
 * Energy of a plant over its rated power. @function
 *
 * @example
 * ```ts
 * import { finalYield } from "pv-to-grid/commissioning";
 * finalYield({ energy: "38.2 kWh", arrayPower: "10 kW" }).text; // "3.82"
 * ```
 */
export const finalYield = /* @__PURE__ */ formula({
  id: "commissioning/final-yield",
  about: "energy of a plant over its rated power",
  takes: {
    energy: { unit: "kWh", symbol: "E_out", about: "energy that the plant gave over the period", from: 0, usual: [0, 1000000] },
    arrayPower: { unit: "kW", symbol: "P_0", about: "power of the array at standard test conditions", above: 0, usual: [0.3, 100000] },
  },
  gives: { unit: "h", symbol: "Y_f" },
  expression: "energy / arrayPower",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "definition" },
});

/**
 * Hours of standard irradiance that a period was worth. @function
 *
 * @example
 * ```ts
 * import { referenceYield } from "pv-to-grid/commissioning";
 * referenceYield({ irradiation: "4.6 kWh/m2" }).text; // "4.6"
 * ```
 */
export const referenceYield = /* @__PURE__ */ formula({
  id: "commissioning/reference-yield",
  about: "hours of standard irradiance that a period was worth",
  takes: {
    irradiation: { unit: "kWh/m²", symbol: "H_i", about: "irradiation in the plane of the array over the period", above: 0, usual: [0.0001, 3000] },
  },
  constants: {
    referenceIrradiance: { value: "1", unit: "kW/m²", symbol: "G_ref", about: "irradiance at which the array is rated", source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }, { in: "IEC 60904-3:2019", clause: "standard test conditions", grade: "memory" }] },
  },
  gives: { unit: "h", symbol: "Y_r" },
  expression: "irradiation / referenceIrradiance",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "definition" },
});

/**
 * Share of the energy that the array would have given without losses. @function
 *
 * @example
 * ```ts
 * import { performanceRatio } from "pv-to-grid/commissioning";
 * performanceRatio({ finalYield: "3.82 h", referenceYield: "4.6 h" }).show(); // "0.8304"
 * ```
 */
export const performanceRatio = /* @__PURE__ */ formula({
  id: "commissioning/performance-ratio",
  about: "share of the energy that the array would have given without losses",
  takes: {
    finalYield: { unit: "h", symbol: "Y_f", about: "energy over rated power", from: 0, usual: [0, 10000] },
    referenceYield: { unit: "h", symbol: "Y_r", about: "irradiation over standard irradiance", above: 0, usual: [0.0001, 3000] },
  },
  gives: { unit: "1", symbol: "PR" },
  expression: "finalYield / referenceYield",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "no publication found", sought: "IEC 61724 performance ratio worked example with energy, rating and irradiation printed" },
  note: "say whether the energy is a.c. or d.c., and whether the irradiation was measured or taken from a satellite",
});

/**
 * Energy of several intervals. @function
 *
 * @example
 * ```ts
 * import { totalEnergy } from "pv-to-grid/commissioning";
 * totalEnergy({ energies: ["1.2 kWh", "1.4 kWh"] }).text; // "2.6"
 * ```
 */
export const totalEnergy = /* @__PURE__ */ formula({
  id: "commissioning/total-energy",
  about: "energy of several intervals",
  takes: {
    energies: { each: "kWh", symbol: "E_k", about: "energy of each interval", from: 0 },
  },
  gives: { unit: "kWh", symbol: "E" },
  expression: "sum(energies)",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "definition" },
});

/**
 * Irradiation of several intervals. @function
 *
 * @example
 * ```ts
 * import { totalIrradiation } from "pv-to-grid/commissioning";
 * totalIrradiation({ irradiations: ["0.12 kWh/m2", "0.15 kWh/m2"] }).text; // "0.27"
 * ```
 */
export const totalIrradiation = /* @__PURE__ */ formula({
  id: "commissioning/total-irradiation",
  about: "irradiation of several intervals",
  takes: {
    irradiations: { each: "kWh/m²", symbol: "H_k", about: "irradiation of each interval", from: 0 },
  },
  gives: { unit: "kWh/m²", symbol: "H_i" },
  expression: "sum(irradiations)",
  source: [{ in: "IEC 61724-1:2017", clause: "performance ratio", grade: "reproduced", seen: "BNRC 46 article 929:2022, table 4, equations 1 to 3" }],
  unproven: { because: "definition" },
});
