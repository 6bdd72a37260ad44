import { table } from "../../formula/index.js";

/**
 * Resistivity of soils as measured in a national survey. @function
 *
 * @example
 * ```ts
 * import { nbsReport108_soil } from "pv-to-grid/earthing";
 * nbsReport108_soil({ soil: "clay, shale, gumbo, loam", statistic: "average" }).text; // "4060"
 * ```
 */
export const nbsReport108_soil = /* @__PURE__ */ table({
  id: "earthing/nbs-report108-soil",
  about: "resistivity of soils as measured in a national survey",
  rows: { name: "soil", names: "in the first column" },
  rowRule: "exact",
  columns: { statistic: ["average", "lowest", "highest"] },
  gives: { unit: "Ω·cm", symbol: "ρ" },
  source: [
    { in: "NBS Report 108:1918", clause: "table of resistivities", grade: "reproduced", seen: "Megger Getting Down to Earth:2010, table I, p. 9" },
  ],
  cells: `
    ashes, cinders, brine wastes                   2370   590    7000
    clay, shale, gumbo, loam                       4060   340    16300
    the same with sand and gravel                  15800  1020   135000
    gravel, sand, stones with little clay or loam  94000  59000  458000
  `,
});

/**
 * Typical range of soil resistivity by class of soil. @function
 *
 * @example
 * ```ts
 * import { ieee142_2007_soil } from "pv-to-grid/earthing";
 * ieee142_2007_soil({ soil: "silty sand", statistic: "lowest" }).text; // "100"
 * ```
 */
export const ieee142_2007_soil = /* @__PURE__ */ table({
  id: "earthing/ieee-142-2007-soil",
  about: "typical range of soil resistivity by class of soil",
  rows: { name: "soil", names: "in the first column" },
  rowRule: "exact",
  columns: { statistic: ["lowest", "highest"] },
  gives: { unit: "Ω·m", symbol: "ρ" },
  source: [{ in: "IEEE 142:2007", clause: "table of soil resistivities", grade: "copied", seen: "Pangonilo note:undated, table 1" }],
  differences: [
    { cell: "silty sand | highest", ships: "800", others: "500", why: "the copy prints 800, a recollection of the standard has 500" },
  ],
  cells: `
    well-graded gravel                         600   1000
    poorly graded gravel                       1000  2500
    clayey gravel                              200   400
    silty sand                                 100   800
    clayey sand                                50    200
    silty or clayey sand of slight plasticity  30    80
  `,
});

/**
 * Typical range of resistivity of common geological materials. @function
 *
 * @example
 * ```ts
 * import { omics2015_ground } from "pv-to-grid/earthing";
 * omics2015_ground({ ground: "boulder clay", statistic: "highest" }).text; // "35"
 * ```
 */
export const omics2015_ground = /* @__PURE__ */ table({
  id: "earthing/omics2015-ground",
  about: "typical range of resistivity of common geological materials",
  rows: { name: "ground", names: "in the first column" },
  rowRule: "exact",
  columns: { statistic: ["lowest", "highest"] },
  gives: { unit: "Ω·m", symbol: "ρ" },
  source: [{ in: "OMICS resistivity table:2015", clause: "table 2", grade: "original" }],
  cells: `
    granite                     300   1000000
    granite, weathered          30    500
    consolidated shale          20    2000
    sandstone                   200   5000
    sandstone, weathered        50    200
    clays                       1     100
    boulder clay                15    35
    clay, very dry              50    150
    gravel, dry                 1400  1400
    gravel, saturated           100   100
    lateritic soil              120   750
    dry sandy soil              80    1050
    sand clay                   30    215
    sand and gravel, saturated  30    225
    mudstone                    20    120
    siltstone                   20    150
  `,
});
