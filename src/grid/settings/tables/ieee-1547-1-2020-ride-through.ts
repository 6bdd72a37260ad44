import { table } from "../../../formula/index.js";

/**
 * Voltage of the ride-through tests of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_rideThroughVoltage } from "pv-to-grid/grid";
 * ieee1547_1_2020_rideThroughVoltage({ test: "II low A" }).text; // "0.94"
 * ```
 */
export const ieee1547_1_2020_rideThroughVoltage = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-ride-through-voltage",
  about: "voltage of the ride-through tests of IEEE 1547.1:2020",
  rows: { name: "test", names: "in the first column", about: "abnormal category, side and condition" },
  rowRule: "exact",
  gives: { unit: "p.u.", symbol: "u" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 4, 5, 7 and 8", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
  cells: `
    II low A     0.94
    II low B     0.3
    II low C     0.45
    II low D     0.65
    II low D'    0.67
    II low E     0.88
    II low F     0.94
    III low A    0.94
    III low B    0.05
    III low C    0.5
    III low C'   0.52
    III low D    0.7
    III low E    0.94
    II high A    1.0
    II high B    1.2
    II high C    1.175
    II high D    1.15
    II high E    1.0
    III high A   1.05
    III high B   1.2
    III high B'  1.12
    III high C   1.05
  `,
  note: "before the margin of the test",
});

/**
 * Least duration of the ride-through tests of IEEE 1547.1:2020.
 *
 * @function
 * @example
 * ```ts
 * import { ieee1547_1_2020_rideThroughTime } from "pv-to-grid/grid";
 * ieee1547_1_2020_rideThroughTime({ test: "II low A" }).text; // "10"
 * ```
 */
export const ieee1547_1_2020_rideThroughTime = /* @__PURE__ */ table({
  id: "grid/ieee-1547-1-2020-ride-through-time",
  about: "least duration of the ride-through tests of IEEE 1547.1:2020",
  rows: { name: "test", names: "in the first column", about: "abnormal category, side and condition" },
  rowRule: "exact",
  gives: { unit: "s", symbol: "t" },
  source: [{ in: "IEEE 1547.1:2020", clause: "tables 4, 5, 7 and 8", grade: "copied", seen: "IEEE 1547.1 test scripts:2022, p1547.py" }],
  cells: `
    II low A     10
    II low B     0.16
    II low C     0.16
    II low D     2.68
    II low D'    7.68
    II low E     2.0
    II low F     120
    III low A    5
    III low B    1
    III low C    9
    III low C'   9
    III low D    10
    III low E    120
    II high A    10
    II high B    0.2
    II high C    0.3
    II high D    0.5
    II high E    120
    III high A   5
    III high B   12
    III high B'  12
    III high C   120
  `,
});
