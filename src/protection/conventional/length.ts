import { formula, table } from "../../formula/index.js";

/**
 * Longest circuit protected against shock by the conventional method. @function
 *
 * @example
 * ```ts
 * import { conventionalLength } from "pv-to-grid/protection";
 * conventionalLength({ lineToEarth: "230 V", conventionalSectionValue: "47.5 mm²", conventionalResistivity: "0.023", reactanceAllowance: "1", sectionRatio: "1", operatingCurrent: "882 A" }).show(); // "215.4 m"
 * ```
 */
export const conventionalLength = /* @__PURE__ */ formula({
  id: "protection/conventional-length",
  about: "longest circuit protected against shock by the conventional method",
  takes: {
    lineToEarth: { unit: "V", symbol: "U_0", about: "nominal voltage between line and earth", above: 0, usual: [50, 700] },
    conventionalSectionValue: { unit: "mm²", symbol: "S_ph", about: "section of the line conductor by the conventional method", above: 0, usual: [1, 500] },
    conventionalResistivity: { unit: "Ω·mm²/m", symbol: "ρ", about: "resistivity during the fault by the conventional method", above: 0, usual: [0.01, 0.1] },
    reactanceAllowance: { unit: "1", symbol: "f_x", about: "factor of the resistance for the reactance of large conductors", from: 1, to: 1.5 },
    sectionRatio: { unit: "1", symbol: "m", about: "section of the line conductor over that of the protective conductor", above: 0, to: 20 },
    operatingCurrent: { unit: "A", symbol: "I_a", about: "current at which the device disconnects in time", above: 0, usual: [1, 100000] },
  },
  constants: {
    conventionalVoltageShare: {
      value: "0.8", unit: "1", symbol: "0.8", about: "share of the voltage that remains at the origin during the fault",
      source: [{ in: "Electrical Installation Guide:2009", clause: "chapter F, 6.2", grade: "memory" }],
    },
  },
  gives: { unit: "m", symbol: "L_max" },
  expression: "conventionalVoltageShare * lineToEarth * conventionalSectionValue / (conventionalResistivity * reactanceAllowance * (1 + sectionRatio) * operatingCurrent)",
  source: [{ in: "Electrical Installation Guide:2009", clause: "chapter F, 6.2", grade: "memory" }],
});

/**
 * Current at which an instantaneous release surely trips. @function
 *
 * @example
 * ```ts
 * import { magneticOperatingCurrent } from "pv-to-grid/protection";
 * magneticOperatingCurrent({ magneticSetting: "100 A" }).text; // "120"
 * ```
 */
export const magneticOperatingCurrent = /* @__PURE__ */ formula({
  id: "protection/magnetic-operating-current",
  about: "current at which an instantaneous release surely trips",
  takes: {
    magneticSetting: { unit: "A", symbol: "I_m", about: "setting of the instantaneous release", above: 0, usual: [1, 100000] },
  },
  constants: {
    magneticTolerance: {
      value: "1.2", unit: "1", symbol: "1.2", about: "tolerance of the instantaneous release",
      source: [{ in: "Electrical Installation Guide:2009", clause: "fig. G47, p. G31", grade: "original" }],
    },
  },
  gives: { unit: "A", symbol: "I_a" },
  expression: "magneticTolerance * magneticSetting",
  source: [{ in: "Electrical Installation Guide:2009", clause: "fig. G47, p. G31", grade: "original" }],
});

/**
 * Resistivity during a fault by the conventional method. @function
 *
 * @example
 * ```ts
 * import { eig2009_resistivity } from "pv-to-grid/protection";
 * eig2009_resistivity({ material: "copper" }).text; // "0.023"
 * ```
 */
export const eig2009_resistivity = /* @__PURE__ */ table({
  id: "protection/eig2009-resistivity",
  about: "resistivity during a fault by the conventional method",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "Ω·mm²/m", symbol: "ρ" },
  source: [{ in: "Electrical Installation Guide:2009", clause: "chapter F, 6.2", grade: "memory" }],
  note: "prints before about 2009 have 0.0225 and 0.036",
  cells: `
    copper     0.023
    aluminium  0.037
  `,
});

/**
 * Section that counts for a nominal section that is drawn smaller. @function
 *
 * @example
 * ```ts
 * import { eig2009_section } from "pv-to-grid/protection";
 * eig2009_section({ section: "50 mm²" }).text; // "47.5"
 * ```
 */
export const eig2009_section = /* @__PURE__ */ table({
  id: "protection/eig2009-section",
  about: "section that counts for a nominal section that is drawn smaller",
  rows: { name: "section", unit: "mm²", symbol: "S" },
  rowRule: "exact",
  gives: { unit: "mm²", symbol: "S" },
  source: [{ in: "Electrical Installation Guide:2009", clause: "fig. G47, note", grade: "original" }],
  cells: `
    50  47.5
  `,
});

/**
 * Factor of the resistance for the reactance of large conductors. @function
 *
 * @example
 * ```ts
 * import { eig2009_reactance_allowance } from "pv-to-grid/protection";
 * eig2009_reactance_allowance({ section: "150 mm²" }).text; // "1.15"
 * ```
 */
export const eig2009_reactance_allowance = /* @__PURE__ */ table({
  id: "protection/eig2009-reactance-allowance",
  about: "factor of the resistance for the reactance of large conductors",
  rows: { name: "section", unit: "mm²", symbol: "S", above: 0, to: 240 },
  rowRule: "next above",
  gives: { unit: "1", symbol: "f_x" },
  source: [{ in: "Electrical Installation Guide:2009", clause: "chapter F, 6.2", grade: "memory" }],
  note: "up to 120 mm² the reactance is neglected",
  cells: `
    120  1
    150  1.15
    185  1.20
    240  1.25
  `,
});
