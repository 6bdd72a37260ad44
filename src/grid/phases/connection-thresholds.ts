import { table } from "../../formula/index.js";

/**
 * Apparent powers at which connection rules change.
 *
 * @function
 * @example
 * ```ts
 * import { apparentPowerThresholds } from "pv-to-grid/grid";
 * apparentPowerThresholds({ threshold: "VDE-AR-N 4105:2011 unbalance" }).text; // "4.6"
 * ```
 */
export const apparentPowerThresholds = /* @__PURE__ */ table({
  id: "grid/apparent-power-thresholds",
  about: "apparent powers at which connection rules change",
  rows: { name: "threshold", names: "in the first column", about: "document and what changes" },
  rowRule: "exact",
  gives: { unit: "kVA", symbol: "S_lim" },
  source: [
    { in: "VDE-AR-N 4105:2011", clause: "overview table", grade: "reproduced", seen: "Solar Energy Consult on 4105:undated, table" },
    { in: "VDE-AR-N 4105:2018", clause: "5.2 and 6.1", grade: "copied", seen: "Grid relay data sheet:undated" },
    { in: "TOR Erzeuger:undated", clause: "external decoupling protection", grade: "reproduced", seen: "Vorarlberger Energienetze notice:undated, body" },
    { in: "NT basic connections:undated", clause: "per phase", grade: "reproduced", seen: "Power and Water consultation:undated, body" },
    { in: "REBT:2002", clause: "ITC-BT-40, 4.3.1", grade: "copied" },
    { in: "Synergrid FAQ:2016", clause: "contents, questions 1 to 3", grade: "original" },
  ],
  cellGrades: {
    copied: ["VDE-AR-N 4105:2018 central protection", "REBT ITC-BT-40 interconnected plant"],
    memory: ["VDE-AR-N 4105:2018 unbalance", "VDE-AR-N 4105:2018 single-phase", "Synergrid C10/11 single-phase", "Synergrid C10/11 multi-phase"],
  },
  cells: `
    VDE-AR-N 4105:2011 unbalance              4.6
    VDE-AR-N 4105:2011 central protection     30
    VDE-AR-N 4105:2018 unbalance              4.6
    VDE-AR-N 4105:2018 single-phase           4.6
    VDE-AR-N 4105:2018 central protection     30
    TOR Erzeuger external protection          30
    Northern Territory per phase              10
    REBT ITC-BT-40 interconnected plant       100
    Synergrid C10/11 single-phase             5
    Synergrid C10/11 multi-phase              10
  `,
  note: "Belgium: which of 5 and 10 kVA is which is read from the order of questions, whose answers were not seen; Austria: from 0 kVA without an automatic disconnector",
});

/**
 * Active powers at which connection rules change.
 *
 * @function
 * @example
 * ```ts
 * import { activePowerThresholds } from "pv-to-grid/grid";
 * activePowerThresholds({ threshold: "AS/NZS 4777.1:2016 single-phase" }).text; // "5"
 * ```
 */
export const activePowerThresholds = /* @__PURE__ */ table({
  id: "grid/active-power-thresholds",
  about: "active powers at which connection rules change",
  rows: { name: "threshold", names: "in the first column", about: "document and what changes" },
  rowRule: "exact",
  gives: { unit: "kW", symbol: "P_lim" },
  source: [
    { in: "AS/NZS 4777.1:2016", clause: "single-phase and three-phase systems, central protection", grade: "reproduced", seen: "SEANZ on 4777.1:2016, items I, II and IV" },
    { in: "RD 1699/2011:2020", clause: "12.2", grade: "copied" },
    { in: "RD 1699/2011:2011", clause: "12.2", grade: "copied" },
    { in: "EREC G98:2022", clause: "scope", grade: "reproduced", seen: "Western Power Distribution G98:undated, rating example" },
    { in: "CEI 0-21:2019", clause: "interface protection outside the inverter", grade: "memory" },
    { in: "EU 2016/631:2016", clause: "article 5, type A", grade: "memory" },
  ],
  cellGrades: {
    copied: ["RD 1699/2011:2020 unbalance", "RD 1699/2011:2020 three phases", "RD 1699/2011:2011 three phases"],
    memory: ["CEI 0-21 external protection", "EU 2016/631 type A"],
  },
  cells: `
    AS/NZS 4777.1:2016 single-phase           5
    AS/NZS 4777.1:2016 unbalance              5
    AS/NZS 4777.1:2016 central protection     30
    RD 1699/2011:2011 three phases            5
    RD 1699/2011:2020 unbalance               5
    RD 1699/2011:2020 three phases            15
    EREC G98 per phase                        3.68
    CEI 0-21 external protection              11.08
    EU 2016/631 type A                        0.8
  `,
  note: "Spain: the unbalance is to be less than the figure, three phases are due above it; the text of 2019 raised 5 kW to 15 kW",
});

/**
 * Currents per phase at which connection rules change.
 *
 * @function
 * @example
 * ```ts
 * import { currentThresholds } from "pv-to-grid/grid";
 * currentThresholds({ threshold: "EREC G98 per phase" }).text; // "16"
 * ```
 */
export const currentThresholds = /* @__PURE__ */ table({
  id: "grid/current-thresholds",
  about: "currents per phase at which connection rules change",
  rows: { name: "threshold", names: "in the first column", about: "document and what changes" },
  rowRule: "exact",
  gives: { unit: "A", symbol: "I_lim" },
  source: [
    { in: "EREC G98:2022", clause: "scope", grade: "reproduced", seen: "Western Power Distribution G98:undated, rating example" },
    { in: "ESB Networks micro-generators:undated", clause: "body", grade: "original" },
    { in: "AS/NZS 4777.2:2015", clause: "phase imbalance", grade: "reproduced", seen: "SEANZ on 4777.2:2016, list of major differences" },
  ],
  cellGrades: { reproduced: ["EREC G98 per phase", "AS/NZS 4777.2:2015 unbalance"] },
  cells: `
    EREC G98 per phase              16
    ESB Networks single-phase       25
    ESB Networks three-phase        16
    AS/NZS 4777.2:2015 unbalance    21.7
  `,
});
