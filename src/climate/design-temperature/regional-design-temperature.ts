import { table } from "../../formula/index.js";

/**
 * Cell temperatures that guides of a region design with.
 *
 * @function
 * @example
 * ```ts
 * import { regionalDesignTemperature } from "pv-to-grid/climate";
 * regionalDesignTemperature({ guide: "GSES handout", extreme: "hot" }).text; // "70"
 * ```
 */
export const regionalDesignTemperature = /* @__PURE__ */ table({
  id: "climate/regional-design-temperature",
  about: "cell temperatures that guides of a region design with",
  rows: { name: "guide", names: "in the first column" },
  rowRule: "exact",
  columns: { extreme: ["cold", "hot"] },
  gives: { unit: "°C", symbol: "T_c" },
  source: [
    { in: "GSES handout:2011", clause: "worked examples 1 to 3", grade: "original" },
    { in: "Fernschule Weber:undated", clause: "system voltage", grade: "original" },
    { in: "GuidEnR course:2011", clause: "step 2, modules in series", grade: "original" },
    { in: "MCS guide:2012", clause: "other module types", grade: "memory" },
    { in: "CEI 82-25:undated", clause: "string voltages", grade: "memory" },
    { in: "SEIAPI guideline:2012", clause: "minimum number of modules in a string", grade: "memory" },
  ],
  cells: `
    Germany, training site             -10  –
    Germany, training site, colder     -15  –
    France, southern plain, course     -10  –
    GSES handout                       0    70
    central Europe, rule of thumb      -10  70
    United Kingdom, MCS guide          -15  –
    Italy, CEI 82-25                   -10  70
    Pacific islands, SEIAPI guideline  –    70
  `,
  cellGrades: {
    memory: [
      "central Europe, rule of thumb",
      "United Kingdom, MCS guide",
      "Italy, CEI 82-25",
      "Pacific islands, SEIAPI guideline",
    ],
  },
  note: "no guide knows the site: Munich, Prague and Warsaw have mean annual minima of −17.3, −16.0 and −18.5 °C in the station data of 2013",
});
