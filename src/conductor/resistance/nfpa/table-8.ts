import { table } from "../../../formula/index.js";

/**
 * D.c. resistance of conductors at 75 °C.
 *
 * @function
 * @example
 * ```ts
 * import { nfpa70_2017_table_8 } from "pv-to-grid/conductor";
 * nfpa70_2017_table_8({ conductorSize: "10 AWG", make: "stranded", metal: "plain copper" }).in("Ω/kft").show({ digits: 3 }); // "1.24 Ω/kft"
 * ```
 */
export const nfpa70_2017_table_8 = /* @__PURE__ */ table({
  id: "conductor/nfpa-70-2017-table-8", about: "d.c. resistance of conductors at 75 °C",
  base: { conductorTemperature: "75 °C" },
  rows: { name: "conductorSize", names: "in the first column" }, rowRule: "exact",
  columns: { make: ["solid", "stranded"], metal: ["plain copper", "coated copper", "aluminium"] },
  gives: { unit: "Ω/km", symbol: "R_75" },
  source: [{ in: "NFPA 70:2017", clause: "chapter 9, table 8", grade: "copied" }],
  differences: [
    { cell: "1500 kcmil | stranded | coated copper", ships: "0.0290", others: "0.02814", why: "the metric column repeats the value of plain copper; shipped is the value in ohms per thousand feet (0.00883), converted" },
    { cell: "1750 kcmil | stranded | coated copper", ships: "0.0248", others: "0.0241", why: "the metric column repeats the value of plain copper; shipped is the value in ohms per thousand feet (0.00756), converted" },
    { cell: "2000 kcmil | stranded | coated copper", ships: "0.0217", others: "0.02109", why: "the metric column repeats the value of plain copper; shipped is the value in ohms per thousand feet (0.00662), converted" },
  ],
  cells: `
    18 AWG      25.5   26.5   42     26.1     27.7    42.8
    16 AWG      16     16.7   26.4   16.4     17.3    26.9
    14 AWG      10.1   10.4   16.6   10.3     10.7    16.9
    12 AWG      6.34   6.57   10.45  6.5      6.73    10.69
    10 AWG      3.984  4.148  6.561  4.07     4.226   6.679
    8 AWG       2.506  2.579  4.125  2.551    2.653   4.204
    6 AWG       –      –      –      1.608    1.671   2.652
    4 AWG       –      –      –      1.01     1.053   1.666
    3 AWG       –      –      –      0.802    0.833   1.32
    2 AWG       –      –      –      0.634    0.661   1.045
    1 AWG       –      –      –      0.505    0.524   0.829
    1/0 AWG     –      –      –      0.399    0.415   0.66
    2/0 AWG     –      –      –      0.317    0.329   0.523
    3/0 AWG     –      –      –      0.2512   0.261   0.413
    4/0 AWG     –      –      –      0.1996   0.205   0.328
    250 kcmil   –      –      –      0.1687   0.1753  0.2778
    300 kcmil   –      –      –      0.1409   0.1463  0.2318
    350 kcmil   –      –      –      0.1205   0.1252  0.1984
    400 kcmil   –      –      –      0.1053   0.1084  0.1737
    500 kcmil   –      –      –      0.0845   0.0869  0.1391
    600 kcmil   –      –      –      0.0704   0.0732  0.1159
    700 kcmil   –      –      –      0.0603   0.0622  0.0994
    750 kcmil   –      –      –      0.0563   0.0579  0.0927
    800 kcmil   –      –      –      0.0528   0.0544  0.0868
    900 kcmil   –      –      –      0.047    0.0481  0.077
    1000 kcmil  –      –      –      0.0423   0.0434  0.0695
    1250 kcmil  –      –      –      0.0338   0.0347  0.0554
    1500 kcmil  –      –      –      0.02814  0.0290  0.0464
    1750 kcmil  –      –      –      0.0241   0.0248  0.0397
    2000 kcmil  –      –      –      0.02109  0.0217  0.0348
  `,
});
