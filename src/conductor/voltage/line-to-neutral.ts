import { formula } from "../../formula/index.js";

/**
 * Line-to-neutral part of a line-to-line voltage change.
 *
 * @function
 * @example
 * ```ts
 * import { lineToNeutral } from "pv-to-grid/conductor";
 * lineToNeutral({ voltageChange: "4.125 V" }).show(); // "2.382 V"
 * ```
 */
export const lineToNeutral = /* @__PURE__ */ formula({
  id: "conductor/line-to-neutral", about: "line-to-neutral part of a line-to-line voltage change",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU", about: "line-to-line voltage change", usual: [-500, 500] },
  },
  gives: { unit: "V", symbol: "ΔU_0" },
  expression: "voltageChange / sqrt(3)",
  source: [
    { in: "Electrical Installation Guide:undated", clause: "chapter G, voltage drop, example 2", grade: "memory" },
    { in: "common practice", clause: "star voltages of a balanced system", grade: "common-practice" },
  ],
  unproven: { because: "no publication found", sought: "examples of the installation guide, which are recalled" },
});

/**
 * Line-to-line voltage change of a line-to-neutral one.
 *
 * @function
 * @example
 * ```ts
 * import { lineToLine } from "pv-to-grid/conductor";
 * lineToLine({ voltageChange: "2.4 V" }).show(); // "4.157 V"
 * ```
 */
export const lineToLine = /* @__PURE__ */ formula({
  id: "conductor/line-to-line", about: "line-to-line voltage change of a line-to-neutral one",
  takes: {
    voltageChange: { unit: "V", symbol: "ΔU_0", about: "line-to-neutral voltage change", usual: [-500, 500] },
  },
  gives: { unit: "V", symbol: "ΔU" },
  expression: "voltageChange * sqrt(3)",
  source: [
    { in: "NFPA 70 Handbook:undated", clause: "commentary on chapter 9, table 9", grade: "memory" },
    { in: "common practice", clause: "star voltages of a balanced system", grade: "common-practice" },
  ],
  unproven: { because: "no publication found", sought: "examples of the code handbook, which are recalled" },
});
