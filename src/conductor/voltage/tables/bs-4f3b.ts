import { table } from "../../../formula/index.js";

/**
 * Voltage drop of flexible cords at 60 °C.
 *
 * @function
 * @example
 * ```ts
 * import { bs7671_2018_4f3b } from "pv-to-grid/conductor";
 * bs7671_2018_4f3b({ section: "1 mm2", arrangement: "three-phase" }).show(); // "40 mV/(A·m)"
 * ```
 */
export const bs7671_2018_4f3b = /* @__PURE__ */ table({
  id: "conductor/bs-7671-2018-4f3b", about: "voltage drop of flexible cords at 60 °C",
  base: { conductorTemperature: "60 °C" },
  rows: { name: "section", unit: "mm²", symbol: "S" }, rowRule: "exact",
  columns: { arrangement: ["d.c. or single-phase", "three-phase"] },
  gives: { unit: "mV/(A·m)", symbol: "v" },
  source: [{ in: "BS 7671:2018", clause: "appendix 4, table 4F3B", grade: "reproduced", seen: "CSE Distributors table 4F3B:undated, table" }],
  cells: `
    0.5   93  80
    0.75  62  54
    1     46  40
    1.25  37  –
    1.5   32  27
    2.5   19  16
    4     12  10
  `,
});
