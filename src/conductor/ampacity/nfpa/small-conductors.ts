import { table } from "../../../formula/index.js";

/**
 * Largest overcurrent device of a small conductor.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_240_4_d } from "pv-to-grid/conductor";
 * nfpa70_2023_240_4_d({ conductorSize: "10 AWG", conductor: "copper" }).show(); // "30 A"
 * ```
 */
export const nfpa70_2023_240_4_d = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-240-4-d", about: "largest overcurrent device of a small conductor",
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"] },
  gives: { unit: "A", symbol: "I_n,max" },
  source: [
    { in: "NFPA 70:2023", clause: "240.4(D)", grade: "copied" },
    { in: "NFPA 70:2020", clause: "240.4(D)", grade: "copied" },
    { in: "NFPA 70:2017", clause: "240.4(D)", grade: "copied" },
  ],
  note: "after all corrections and adjustments; 18 and 16 AWG need devices of special kinds and are left out",
  cells: `
    14 AWG  15  –
    12 AWG  20  15
    10 AWG  30  25
  `,
});
