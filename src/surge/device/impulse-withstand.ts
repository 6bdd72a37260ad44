import { table } from "../../formula/index.js";

/**
 * Rated impulse voltage of equipment by its overvoltage category. @function
 *
 * @example
 * ```ts
 * import { iec60664_1_2007_impulse_withstand } from "pv-to-grid/surge";
 * iec60664_1_2007_impulse_withstand({ voltageToEarth: "230 V", overvoltageCategory: "III" }).text; // "4000"
 * ```
 */
export const iec60664_1_2007_impulse_withstand = /* @__PURE__ */ table({
  id: "surge/iec-60664-1-2007-impulse-withstand",
  about: "rated impulse voltage of equipment by its overvoltage category",
  rows: { name: "voltageToEarth", unit: "V", symbol: "U" },
  rowRule: "next above",
  columns: { overvoltageCategory: ["I", "II", "III", "IV"] },
  gives: { unit: "V", symbol: "U_w" },
  source: [{ in: "IEC 60664-1:2007", clause: "table F.1", grade: "reproduced", seen: "Promotelec lightning page:2017, body" }],
  cellGrades: {
    memory: ["50", "100", "150", "600", "1000", "1500"],
  },
  note: "for d.c. arrays the highest voltage of the array against earth; the maker's value goes before it",
  cells: `
    50    330   500   800    1500
    100   500   800   1500   2500
    150   800   1500  2500   4000
    300   1500  2500  4000   6000
    600   2500  4000  6000   8000
    1000  4000  6000  8000   12000
    1500  6000  8000  10000  15000
  `,
});
