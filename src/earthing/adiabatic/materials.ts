import { table } from "../../formula/index.js";

/**
 * Volumetric heat capacity of conductor materials at 20 °C. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_heat_capacity } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_heat_capacity({ material: "copper" }).text; // "0.00345"
 * ```
 */
export const iec60364_5_54_2011_heat_capacity = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-heat-capacity",
  about: "volumetric heat capacity of conductor materials at 20 °C",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "J/(K·mm³)", symbol: "Q_c" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.1", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
  cells: `
    copper     0.00345
    aluminium  0.0025
    lead       0.00145
    steel      0.0038
  `,
});

/**
 * Reciprocal of the temperature coefficient of resistivity at 0 °C. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_reciprocal_coefficient } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_reciprocal_coefficient({ material: "aluminium" }).text; // "228"
 * ```
 */
export const iec60364_5_54_2011_reciprocal_coefficient = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-reciprocal-coefficient",
  about: "reciprocal of the temperature coefficient of resistivity at 0 °C",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "K", symbol: "β" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.1", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
  cells: `
    copper     234.5
    aluminium  228
    lead       230
    steel      202
  `,
});

/**
 * Resistivity of conductor materials at 20 °C. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_resistivity } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_resistivity({ material: "steel" }).text; // "0.000138"
 * ```
 */
export const iec60364_5_54_2011_resistivity = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-resistivity",
  about: "resistivity of conductor materials at 20 °C",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "Ω·mm", symbol: "ρ_20" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.1", grade: "copied", seen: "IS 3043 sheet Dahej:undated, steps 1 and 2" }],
  cellGrades: {
    memory: ["copper", "aluminium"],
  },
  note: "the sheet prints three digits, 17.2 and 28.3 for copper and aluminium; the further digits are recalled",
  cells: `
    copper     0.000017241
    aluminium  0.000028264
    lead       0.000214
    steel      0.000138
  `,
});

/**
 * Adiabatic factor of conductor materials before the temperatures are known. @function
 *
 * @example
 * ```ts
 * import { iec60364_5_54_2011_prefactor } from "pv-to-grid/earthing";
 * iec60364_5_54_2011_prefactor({ material: "copper" }).text; // "226"
 * ```
 */
export const iec60364_5_54_2011_prefactor = /* @__PURE__ */ table({
  id: "earthing/iec-60364-5-54-2011-prefactor",
  about: "adiabatic factor of conductor materials before the temperatures are known",
  rows: { name: "material", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "A·√s/mm²", symbol: "K" },
  source: [{ in: "IEC 60364-5-54:2011", clause: "table A.54.1", grade: "memory" }],
  cells: `
    copper     226
    aluminium  148
    lead       41
    steel      78
  `,
});
