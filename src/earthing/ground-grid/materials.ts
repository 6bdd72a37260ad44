import { table } from "../../formula/index.js";

/**
 * Temperature coefficient of resistivity at 20 °C of ground-grid conductors. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_coefficient } from "pv-to-grid/earthing";
 * ieee80_2000_coefficient({ material: "steel 1020" }).text; // "0.0016"
 * ```
 */
export const ieee80_2000_coefficient = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-coefficient",
  about: "temperature coefficient of resistivity at 20 °C of ground-grid conductors",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "1/K", symbol: "α_r" },
  source: [{ in: "IEEE 80:2000", clause: "table 1", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                0.00393
    copper, commercial hard-drawn              0.00381
    copper-clad steel wire, 40 % conductivity  0.00378
    copper-clad steel wire, 30 % conductivity  0.00378
    copper-clad steel rod                      0.00378
    aluminium, EC grade                        0.00403
    aluminium 5005                             0.00353
    aluminium 6201                             0.00347
    aluminium-clad steel wire                  0.00360
    steel 1020                                 0.00160
    stainless-clad steel rod                   0.00160
    zinc-coated steel rod                      0.00320
    stainless steel 304                        0.00130
  `,
});

/**
 * Inverse of the temperature coefficient of resistivity at 0 °C of ground-grid conductors. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_inverse_coefficient } from "pv-to-grid/earthing";
 * ieee80_2000_inverse_coefficient({ material: "steel 1020" }).text; // "605"
 * ```
 */
export const ieee80_2000_inverse_coefficient = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-inverse-coefficient",
  about: "inverse of the temperature coefficient of resistivity at 0 °C of ground-grid conductors",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "K", symbol: "K_0" },
  source: [{ in: "IEEE 80:2000", clause: "table 1", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                234
    copper, commercial hard-drawn              242
    copper-clad steel wire, 40 % conductivity  245
    copper-clad steel wire, 30 % conductivity  245
    copper-clad steel rod                      245
    aluminium, EC grade                        228
    aluminium 5005                             263
    aluminium 6201                             268
    aluminium-clad steel wire                  258
    steel 1020                                 605
    stainless-clad steel rod                   605
    zinc-coated steel rod                      293
    stainless steel 304                        749
  `,
});

/**
 * Fusing temperature of ground-grid conductors. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_fusing_temperature } from "pv-to-grid/earthing";
 * ieee80_2000_fusing_temperature({ material: "steel 1020" }).text; // "1510"
 * ```
 */
export const ieee80_2000_fusing_temperature = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-fusing-temperature",
  about: "fusing temperature of ground-grid conductors",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "°C", symbol: "T_m" },
  source: [{ in: "IEEE 80:2000", clause: "table 1", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                1083
    copper, commercial hard-drawn              1084
    copper-clad steel wire, 40 % conductivity  1084
    copper-clad steel wire, 30 % conductivity  1084
    copper-clad steel rod                      1084
    aluminium, EC grade                        657
    aluminium 5005                             652
    aluminium 6201                             654
    aluminium-clad steel wire                  657
    steel 1020                                 1510
    stainless-clad steel rod                   1400
    zinc-coated steel rod                      419
    stainless steel 304                        1400
  `,
});

/**
 * Resistivity at 20 °C of ground-grid conductors. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_resistivity } from "pv-to-grid/earthing";
 * ieee80_2000_resistivity({ material: "steel 1020" }).text; // "15.9"
 * ```
 */
export const ieee80_2000_resistivity = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-resistivity",
  about: "resistivity at 20 °C of ground-grid conductors",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "μΩ·cm", symbol: "ρ_r" },
  source: [{ in: "IEEE 80:2000", clause: "table 1", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                1.72
    copper, commercial hard-drawn              1.78
    copper-clad steel wire, 40 % conductivity  4.40
    copper-clad steel wire, 30 % conductivity  5.86
    copper-clad steel rod                      8.62
    aluminium, EC grade                        2.86
    aluminium 5005                             3.22
    aluminium 6201                             3.28
    aluminium-clad steel wire                  8.48
    steel 1020                                 15.90
    stainless-clad steel rod                   17.50
    zinc-coated steel rod                      20.10
    stainless steel 304                        72.00
  `,
});

/**
 * Thermal capacity of ground-grid conductors. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_thermal_capacity } from "pv-to-grid/earthing";
 * ieee80_2000_thermal_capacity({ material: "steel 1020" }).text; // "3.28"
 * ```
 */
export const ieee80_2000_thermal_capacity = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-thermal-capacity",
  about: "thermal capacity of ground-grid conductors",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "J/(K·cm³)", symbol: "TCAP" },
  source: [{ in: "IEEE 80:2000", clause: "table 1", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                3.42
    copper, commercial hard-drawn              3.42
    copper-clad steel wire, 40 % conductivity  3.85
    copper-clad steel wire, 30 % conductivity  3.85
    copper-clad steel rod                      3.85
    aluminium, EC grade                        2.56
    aluminium 5005                             2.60
    aluminium 6201                             2.60
    aluminium-clad steel wire                  3.58
    steel 1020                                 3.28
    stainless-clad steel rod                   4.44
    zinc-coated steel rod                      3.93
    stainless steel 304                        4.03
  `,
});

/**
 * Section of ground-grid conductors for one kiloampere during one second, fused from 40 °C. @function
 *
 * @example
 * ```ts
 * import { ieee80_2000_fusing_factor } from "pv-to-grid/earthing";
 * ieee80_2000_fusing_factor({ material: "copper, commercial hard-drawn" }).text; // "7.06"
 * ```
 */
export const ieee80_2000_fusing_factor = /* @__PURE__ */ table({
  id: "earthing/ieee-80-2000-fusing-factor",
  about: "section of ground-grid conductors for one kiloampere during one second, fused from 40 °C",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "kcmil/(kA·√s)", symbol: "K_f" },
  source: [{ in: "IEEE 80:2000", clause: "table 2", grade: "memory" }],
  cells: `
    copper, annealed soft-drawn                7.00
    copper, commercial hard-drawn              7.06
    copper-clad steel wire, 40 % conductivity  10.45
    copper-clad steel wire, 30 % conductivity  12.06
    copper-clad steel rod                      14.64
    aluminium, EC grade                        12.12
    aluminium 5005                             12.41
    aluminium 6201                             12.47
    aluminium-clad steel wire                  17.20
    steel 1020                                 15.95
    stainless-clad steel rod                   14.72
    zinc-coated steel rod                      28.96
    stainless steel 304                        30.05
  `,
});
