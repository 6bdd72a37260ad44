import { table } from "../../../formula/index.js";

/**
 * Ampacity of up to three insulated conductors in a raceway, cable or the earth.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2023_310_16 } from "pv-to-grid/conductor";
 * nfpa70_2023_310_16({ conductorSize: "10 AWG", conductor: "copper", rating: "75 °C" }).show(); // "35 A"
 * ```
 */
export const nfpa70_2023_310_16 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2023-310-16", about: "ampacity of up to three insulated conductors in a raceway, cable or the earth",
  base: { air: "30 °C" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { conductor: ["copper", "aluminium"], rating: ["60 °C", "75 °C", "90 °C"] },
  gives: { unit: "A", symbol: "I_tab" },
  source: [
    { in: "NFPA 70:2023", clause: "table 310.16", grade: "copied" },
    { in: "NFPA 70:2020", clause: "table 310.16", grade: "copied" },
    { in: "NFPA 70:2017", clause: "table 310.15(B)(16)", grade: "copied" },
  ],
  note: "aluminium columns hold for copper-clad aluminium too; the table has not changed from 2011 to 2023",
  cells: `
    18 AWG      –    –    14   –    –    –
    16 AWG      –    –    18   –    –    –
    14 AWG      15   20   25   –    –    –
    12 AWG      20   25   30   15   20   25
    10 AWG      30   35   40   25   30   35
    8 AWG       40   50   55   35   40   45
    6 AWG       55   65   75   40   50   55
    4 AWG       70   85   95   55   65   75
    3 AWG       85   100  115  65   75   85
    2 AWG       95   115  130  75   90   100
    1 AWG       110  130  145  85   100  115
    1/0 AWG     125  150  170  100  120  135
    2/0 AWG     145  175  195  115  135  150
    3/0 AWG     165  200  225  130  155  175
    4/0 AWG     195  230  260  150  180  205
    250 kcmil   215  255  290  170  205  230
    300 kcmil   240  285  320  195  230  260
    350 kcmil   260  310  350  210  250  280
    400 kcmil   280  335  380  225  270  305
    500 kcmil   320  380  430  260  310  350
    600 kcmil   350  420  475  285  340  385
    700 kcmil   385  460  520  315  375  425
    750 kcmil   400  475  535  320  385  435
    800 kcmil   410  490  555  330  395  445
    900 kcmil   435  520  585  355  425  480
    1000 kcmil  455  545  615  375  445  500
    1250 kcmil  495  590  665  405  485  545
    1500 kcmil  525  625  705  435  520  585
    1750 kcmil  545  650  735  455  545  615
    2000 kcmil  555  665  750  470  560  630
  `,
});
