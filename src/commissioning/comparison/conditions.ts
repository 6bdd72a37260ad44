import { condition } from "../../formula/index.js";

/**
 * Do the open-circuit voltages of identical strings agree? @function
 *
 * @example
 * ```ts
 * import { identicalVoltagesAgree } from "pv-to-grid/commissioning";
 * identicalVoltagesAgree({ value: "4 %", limit: "5 %" }).verdict; // "met"
 * ```
 */
export const identicalVoltagesAgree = /* @__PURE__ */ condition({
  id: "commissioning/identical-voltages-agree",
  asks: "Do the open-circuit voltages of identical strings agree?",
  force: "recommendation",
  value: { unit: "1", symbol: "s", about: "largest share between two strings" },
  relation: "≤",
  limit: { unit: "1", symbol: "τ_S", about: "tolerance between identical strings" },
  source: [{ in: "IEC 62446:2009", clause: "5.4.4", grade: "reproduced", seen: "Seaward test poster:2012, box 5.4.4" }, { in: "IEC 62446-1:2016", clause: "string open-circuit voltage", grade: "memory" }],
});

/**
 * Do the short-circuit currents of identical strings agree? @function
 *
 * @example
 * ```ts
 * import { identicalCurrentsAgree } from "pv-to-grid/commissioning";
 * identicalCurrentsAgree({ value: "6 %", limit: "5 %" }).verdict; // "not met"
 * ```
 */
export const identicalCurrentsAgree = /* @__PURE__ */ condition({
  id: "commissioning/identical-currents-agree",
  asks: "Do the short-circuit currents of identical strings agree?",
  force: "recommendation",
  value: { unit: "1", symbol: "s", about: "largest share between two strings" },
  relation: "≤",
  limit: { unit: "1", symbol: "τ_S", about: "tolerance between identical strings" },
  source: [{ in: "IEC 62446-1:2016", clause: "string short-circuit current", grade: "memory" }],
  note: "under steady light",
});

/**
 * Is the operating current of the string near the average of the strings? @function
 *
 * @example
 * ```ts
 * import { currentNearAverage } from "pv-to-grid/commissioning";
 * currentNearAverage({ value: "3 %", limit: "5 %" }).verdict; // "met"
 * ```
 */
export const currentNearAverage = /* @__PURE__ */ condition({
  id: "commissioning/current-near-average",
  asks: "Is the operating current of the string near the average of the strings?",
  force: "recommendation",
  value: { unit: "1", symbol: "|d|", about: "share by which the string differs from the average" },
  relation: "≤",
  limit: { unit: "1", symbol: "τ_A", about: "tolerance about the average" },
  source: [{ in: "D.c. amperage clause:undated", clause: "acceptance", grade: "copied" }],
});
