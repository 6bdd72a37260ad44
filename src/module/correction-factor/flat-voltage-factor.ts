import { table } from "../../formula/index.js";

/**
 * Flat voltage factors in use where the temperature or the coefficient is not known.
 *
 * @function
 * @example
 * ```ts
 * import { flatVoltageFactor } from "pv-to-grid/module";
 * flatVoltageFactor({ document: "IEC 60364-7-712:2017" }).text; // "1.2"
 * ```
 */
export const flatVoltageFactor = /* @__PURE__ */ table({
  id: "module/flat-voltage-factor",
  about: "flat voltage factors in use where the temperature or the coefficient is not known",
  base: { openCircuitVoltage: "25 °C" },
  rows: { name: "document", names: "in the first column", about: "the document that states the factor" },
  rowRule: "exact",
  gives: { unit: "1", symbol: "k" },
  source: [
    { in: "Oscaro Power note:undated", clause: "simplified calculation", grade: "original" },
    { in: "IEC 60364-7-712:2017", clause: "annex B, K_U", grade: "memory" },
    { in: "MCS guide:2012", clause: "minimum voltage rating of d.c. components", grade: "memory" },
    { in: "AQUISAV exercise:2017", clause: "page 4", grade: "original" },
  ],
  cells: `
    Oscaro Power note      1.2
    IEC 60364-7-712:2017   1.2
    MCS guide:2012         1.15
    AQUISAV exercise:2017  1.15
  `,
  cellGrades: { memory: ["IEC 60364-7-712:2017", "MCS guide:2012"] },
  note: "by the factors of UTE C15-712-1, 1.15 covers crystalline silicon to −10 °C and 1.2 to −25 °C; a colder site needs a coefficient",
});
