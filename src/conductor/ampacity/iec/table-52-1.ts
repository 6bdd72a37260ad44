import { table } from "../../../formula/index.js";

/**
 * Highest temperature of a conductor in continuous service.
 *
 * @function
 * @example
 * ```ts
 * import { conductorLimits } from "pv-to-grid/conductor";
 * conductorLimits({ insulation: "XLPE" }).show(); // "90 °C"
 * ```
 */
export const conductorLimits = /* @__PURE__ */ table({
  id: "conductor/conductor-limits", about: "highest temperature of a conductor in continuous service",
  rows: { name: "insulation", names: "in the first column" }, rowRule: "exact",
  gives: { unit: "°C", symbol: "θ_max" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "table 52.1", grade: "reproduced", seen: "NF C 15-100 course:undated, insulation limits" }],
  cells: `
    PVC   70
    XLPE  90
  `,
});
