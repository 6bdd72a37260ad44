import { table } from "../../../formula/index.js";

/**
 * Dead band of the frequency droop of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_droopDeadBand } from "pv-to-grid/grid";
 * ieee1547_2018_droopDeadBand({ setting: "droopDeadBand", category: "I", value: "setting" }).text; // "0.036"
 * ```
 */
export const ieee1547_2018_droopDeadBand = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-droop-dead-band",
  about: "dead band of the frequency droop of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], value: ["setting", "lowest", "highest"] },
  gives: { unit: "Hz", symbol: "db" },
  source: [
    { in: "IEEE 1547:2018", clause: "table 24", grade: "copied", seen: "UL1741SB test scripts:2026, FreqSupp" },
    { in: "IEEE 1547:2018", clause: "table 24", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" },
  ],
  cellGrades: { memory: ["droopDeadBand | I | highest", "droopDeadBand | II | highest", "droopDeadBand | III | highest"] },
  cells: `
    droopDeadBand  0.036  0.017  1.0  0.036  0.017  1.0  0.036  0.017  1.0
  `,
  note: "lowest: that of the second test characteristic",
});

/**
 * Droop of the frequency droop of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_droop } from "pv-to-grid/grid";
 * ieee1547_2018_droop({ setting: "frequencyDroop", category: "I", value: "setting" }).text; // "0.05"
 * ```
 */
export const ieee1547_2018_droop = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-droop",
  about: "droop of the frequency droop of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], value: ["setting", "lowest", "highest"] },
  gives: { unit: "p.u.", symbol: "k" },
  source: [{ in: "IEEE 1547:2018", clause: "table 24", grade: "copied", seen: "UL1741SB test scripts:2026, FreqSupp" }],
  cellGrades: { memory: ["frequencyDroop | I | highest", "frequencyDroop | II | highest", "frequencyDroop | III | highest"] },
  differences: [
    { cell: "frequencyDroop | III | lowest", ships: "0.02", others: "0.03", why: "two sets of test scripts differ for the second characteristic of category III; the wider range is recalled, and a setting between the two is to be confirmed" },
  ],
  cells: `
    frequencyDroop  0.05  0.03  0.05  0.05  0.03  0.05  0.05  0.02  0.05
  `,
});

/**
 * Open-loop response time of the frequency droop of IEEE 1547:2018.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_2018_droopResponseTime } from "pv-to-grid/grid";
 * ieee1547_2018_droopResponseTime({ setting: "droopResponseTime", category: "I", value: "setting" }).text; // "5"
 * ```
 */
export const ieee1547_2018_droopResponseTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-2018-droop-response-time",
  about: "open-loop response time of the frequency droop of IEEE 1547:2018",
  rows: { name: "setting", names: "in the first column", about: "setting" },
  rowRule: "exact",
  columns: { category: ["I", "II", "III"], value: ["setting", "lowest", "highest"] },
  gives: { unit: "s", symbol: "T_r" },
  source: [{ in: "IEEE 1547:2018", clause: "table 24", grade: "copied", seen: "UL1741SB test scripts:2026, FreqSupp" }],
  cellGrades: { memory: ["droopResponseTime | I | highest", "droopResponseTime | II | highest", "droopResponseTime | III | highest"] },
  cells: `
    droopResponseTime  5.0  1.0  10.0  5.0  1.0  10.0  5.0  0.2  10.0
  `,
});
