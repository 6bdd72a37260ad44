import { formula, table } from "../../formula/index.js";

/**
 * Largest voltage change as a share of the nominal voltage, by document and stretch.
 *
 * @function
 * @example
 * ```ts
 * import { voltageLimitShares } from "pv-to-grid/conductor";
 * voltageLimitShares({ changeLimit: "REBT:2002, generator to connection" }).show(); // "1.5 %"
 * ```
 */
export const voltageLimitShares = /* @__PURE__ */ table({
  id: "conductor/voltage-limit-shares", about: "largest voltage change as a share of the nominal voltage, by document and stretch",
  rows: { name: "changeLimit", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "%", symbol: "Δu_max" },
  source: [
    { in: "IEC 60364-5-52:2009", clause: "annex G, table G.52.1", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, table" },
    { in: "BS 7671:2018", clause: "appendix 4, 6.4", grade: "reproduced", seen: "Linsley:undated, p. 302" },
    { in: "AS/NZS 4777.1:2016", clause: "3.3.3", grade: "reproduced", seen: "SEANZ on 4777.1:2016, item III" },
    { in: "VDE-AR-N 4105:2018", clause: "voltage change", grade: "memory" },
    { in: "REBT:2002", clause: "ITC-BT-19, 2.2.2 and ITC-BT-40, 5", grade: "copied" },
    { in: "NFPA 70:2017", clause: "210.19(A)(1) informational note 4, 215.2(A)(1) informational note 2", grade: "copied" },
    { in: "MCS guide:2012", clause: "d.c. cables", grade: "memory" },
    { in: "AS/NZS 3000:2018", clause: "3.6.2", grade: "memory" },
    { in: "Penn State AE 868:undated", clause: "voltage drop", grade: "original" },
  ],
  cellGrades: { memory: ["AS/NZS 3000:2018, point of supply to any point", "VDE-AR-N 4105:2018, connection point", "MCS guide:2012, array to inverter", "AS/NZS 5033 practice, array to inverter"], copied: ["REBT:2002, generator to connection", "REBT:2002, lighting or dwelling", "REBT:2002, other uses", "NFPA 70:2017, branch circuit or feeder", "NFPA 70:2017, feeder and branch circuit"], original: ["Penn State, direct current", "Penn State, alternating current"] },
  note: "a limit holds for its own stretch, its own current and its own plants, and is never applied to another",
  cells: `
    IEC 60364-5-52:2009, lighting, public supply     3
    IEC 60364-5-52:2009, other uses, public supply   5
    IEC 60364-5-52:2009, lighting, own supply        6
    IEC 60364-5-52:2009, other uses, own supply      8
    BS 7671:2018, lighting                           3
    BS 7671:2018, other uses                         5
    AS/NZS 3000:2018, point of supply to any point   5
    AS/NZS 4777.1:2016, inverter to point of supply  2
    VDE-AR-N 4105:2018, connection point             3
    REBT:2002, generator to connection               1.5
    REBT:2002, lighting or dwelling                  3
    REBT:2002, other uses                            5
    NFPA 70:2017, branch circuit or feeder           3
    NFPA 70:2017, feeder and branch circuit          5
    MCS guide:2012, array to inverter                3
    AS/NZS 5033 practice, array to inverter          3
    Penn State, direct current                       2
    Penn State, alternating current                  1
  `,
});

/**
 * Rise of the limits of annex G for a main wiring of more than 100 m.
 *
 * @function
 * @example
 * ```ts
 * import { supplementOfAnnexG } from "pv-to-grid/conductor";
 * supplementOfAnnexG({ length: "150 m" }).text; // "0.25"
 * ```
 */
export const supplementOfAnnexG = /* @__PURE__ */ formula({
  id: "conductor/supplement-of-annex-g", about: "rise of the limits of annex G for a main wiring of more than 100 m",
  takes: {
    length: { unit: "m", symbol: "L", about: "length one way", above: 0, usual: [0.1, 10000] },
  },
  constants: {
    freeLength: { value: "100", unit: "m", symbol: "L_0", about: "length without a supplement", source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, note", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, note" }] },
    supplementPerMetre: { value: "0.005", unit: "%/m", symbol: "s", about: "supplement for each further metre", source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, note", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, note" }] },
    largestSupplement: { value: "0.5", unit: "%", symbol: "Δu_max", about: "largest supplement", source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, note", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, note" }] },
  },
  gives: { unit: "%", symbol: "Δu_+" },
  expression: "min(largestSupplement, supplementPerMetre * (max(length, freeLength) - freeLength))",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, note", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, note" }],
  unproven: { because: "no publication found", sought: "worked supplements" },
});

/**
 * Limit of annex G with its supplement.
 *
 * @function
 * @example
 * ```ts
 * import { limitOfAnnexG } from "pv-to-grid/conductor";
 * limitOfAnnexG({ tabulatedLimit: "3 %", supplement: "0.25 %" }).text; // "3.25"
 * ```
 */
export const limitOfAnnexG = /* @__PURE__ */ formula({
  id: "conductor/limit-of-annex-g", about: "limit of annex G with its supplement",
  takes: {
    tabulatedLimit: { unit: "%", symbol: "Δu_t", about: "limit of the table", above: 0, to: 20 },
    supplement: { unit: "%", symbol: "Δu_+", about: "supplement for the length", from: 0, to: 0.5 },
  },
  gives: { unit: "%", symbol: "Δu_max" },
  expression: "tabulatedLimit + supplement",
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex G, note", grade: "reproduced", seen: "cabledatasheet voltage drop page:undated, note" }],
  unproven: { because: "definition" },
});
