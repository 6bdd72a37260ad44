import { series } from "../../formula/index.js";

/**
 * Nominal cross-sections of conductors.
 *
 * @function
 * @example
 * ```ts
 * import { iec60228_2004_sections } from "pv-to-grid/conductor";
 * iec60228_2004_sections.sizes().length; // 24
 * ```
 */
export const iec60228_2004_sections = /* @__PURE__ */ series({
  id: "conductor/iec-60228-2004-sections", about: "nominal cross-sections of conductors",
  unit: "mm²", symbol: "S",
  sizes: "0.5 0.75 1 1.5 2.5 4 6 10 16 25 35 50 70 95 120 150 185 240 300 400 500 630 800 1000",
  source: [{ in: "IEC 60228:2004", clause: "tables 1 to 3", grade: "reproduced", seen: "Kabelmetal conductor tables:2011, tables 1 and 2" }],
});
