import { table } from "../../formula/index.js";

/**
 * Irradiance on the rear in the conditions that bifacial modules are rated and stressed at.
 *
 * @function
 * @example
 * ```ts
 * import { bifacialRearIrradiance } from "pv-to-grid/module";
 * bifacialRearIrradiance({ bifacialCondition: "nameplate" }).text; // "135"
 * ```
 */
export const bifacialRearIrradiance = /* @__PURE__ */ table({
  id: "module/bifacial-rear-irradiance",
  about: "irradiance on the rear in the conditions that bifacial modules are rated and stressed at",
  base: { frontIrradiance: "1000 W/m²" },
  rows: { name: "bifacialCondition", names: "in the first column" },
  rowRule: "exact",
  gives: { unit: "W/m²", symbol: "G_R" },
  source: [{ in: "IEC 61215-1:2021", clause: "bifacial nameplate and bifacial stress irradiance", grade: "memory" }],
  cells: `
    nameplate  135
    stress     300
  `,
});
