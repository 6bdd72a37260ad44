import { table } from "../../../formula/index.js";

/**
 * Current-carrying capacity of photovoltaic cables.
 *
 * @function
 * @example
 * ```ts
 * import { en50618_2014_a_3 } from "pv-to-grid/conductor";
 * en50618_2014_a_3({ section: "4 mm2", arrangement: "two touching on a surface" }).show(); // "44 A"
 * ```
 */
export const en50618_2014_a_3 = /* @__PURE__ */ table({
  id: "conductor/en-50618-2014-a-3", about: "current-carrying capacity of photovoltaic cables",
  base: { air: "60 °C", conductorTemperature: "120 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["single in free air", "single on a surface", "two touching on a surface"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [{ in: "EN 50618:2014", clause: "annex A, table A.3", grade: "reproduced", seen: "Yongben PV1-F page:undated, single in free air, 1.5 to 25 mm²" }],
  cellGrades: { memory: ["1.5 | single on a surface", "1.5 | two touching on a surface", "2.5 | single on a surface", "2.5 | two touching on a surface", "4 | single on a surface", "4 | two touching on a surface", "6 | single on a surface", "6 | two touching on a surface", "10 | single on a surface", "10 | two touching on a surface", "16 | single on a surface", "16 | two touching on a surface", "25 | single on a surface", "25 | two touching on a surface", "35 | single in free air", "35 | single on a surface", "35 | two touching on a surface", "50 | single in free air", "50 | single on a surface", "50 | two touching on a surface", "70 | single in free air", "70 | single on a surface", "70 | two touching on a surface", "95 | single in free air", "95 | single on a surface", "95 | two touching on a surface", "120 | single in free air", "120 | single on a surface", "120 | two touching on a surface", "150 | single in free air", "150 | single on a surface", "150 | two touching on a surface", "185 | single in free air", "185 | single on a surface", "185 | two touching on a surface", "240 | single in free air", "240 | single on a surface", "240 | two touching on a surface"] },
  note: "a conductor at 120 °C is allowed for 20,000 h in all; the currents are no continuous rating over the life of a plant",
  cells: `
    1.5  30   29   24
    2.5  41   39   33
    4    55   52   44
    6    70   67   57
    10   98   93   79
    16   132  125  107
    25   176  167  142
    35   218  207  176
    50   276  262  221
    70   347  330  278
    95   416  395  333
    120  488  464  390
    150  566  538  453
    185  644  612  515
    240  775  736  620
  `,
});
