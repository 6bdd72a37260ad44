import { table } from "../../../formula/index.js";

/**
 * Ampacity of up to three conductors of 105 °C and 125 °C in a raceway, cable or the earth.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2020_690_31_a_b } from "pv-to-grid/conductor";
 * nfpa70_2020_690_31_a_b({ conductorSize: "10 AWG", rating: "105 °C" }).show(); // "46 A"
 * ```
 */
export const nfpa70_2020_690_31_a_b = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2020-690-31-a-b", about: "ampacity of up to three conductors of 105 °C and 125 °C in a raceway, cable or the earth",
  base: { air: "30 °C" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { rating: ["105 °C", "125 °C"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [
    { in: "NFPA 70:2020", clause: "table 690.31(A)(b)", grade: "copied" },
  ],
  note: "the temperature limits of terminals hold all the same",
  cells: `
    18 AWG   15   16
    16 AWG   19   20
    14 AWG   29   31
    12 AWG   36   39
    10 AWG   46   50
    8 AWG    64   69
    6 AWG    81   87
    4 AWG    109  118
    3 AWG    129  139
    2 AWG    143  154
    1 AWG    168  181
    1/0 AWG  193  208
    2/0 AWG  229  247
    3/0 AWG  263  284
    4/0 AWG  301  325
  `,
});
