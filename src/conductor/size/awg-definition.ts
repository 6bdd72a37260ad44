import { formula } from "../../formula/index.js";

/**
 * Diameter of a solid wire by its American wire gauge.
 *
 * @function
 * @example
 * ```ts
 * import { awgDiameter } from "pv-to-grid/conductor";
 * awgDiameter({ gauge: 10 }).show(); // "2.588 mm"
 * ```
 */
export const awgDiameter = /* @__PURE__ */ formula({
  id: "conductor/awg-diameter", about: "diameter of a solid wire by its American wire gauge",
  takes: {
    gauge: { unit: "1", symbol: "n", about: "gauge number; 0 for 1/0, -1 for 2/0, -2 for 3/0, -3 for 4/0", from: -3, to: 40 },
  },
  constants: {
    smallestDiameter: { value: "0.127", unit: "mm", symbol: "d_36", about: "diameter of 36 AWG", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
    gaugeRatio: { value: "92", unit: "1", symbol: "r", about: "diameter of 4/0 AWG over that of 36 AWG", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
    lastGauge: { value: "36", unit: "1", symbol: "n_36", about: "gauge number of the smallest wire of the definition", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
    gaugeSteps: { value: "39", unit: "1", symbol: "N", about: "steps from 4/0 to 36 AWG", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
  },
  gives: { unit: "mm", symbol: "d" },
  expression: "smallestDiameter * gaugeRatio ^ ((lastGauge - gauge) / gaugeSteps)",
  source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }],
});

/**
 * Area of a round wire in circular mils.
 *
 * @function
 * @example
 * ```ts
 * import { circularMils } from "pv-to-grid/conductor";
 * circularMils({ conductorDiameter: "0.1285 in" }).text; // "16512.25"
 * ```
 */
export const circularMils = /* @__PURE__ */ formula({
  id: "conductor/circular-mils", about: "area of a round wire in circular mils",
  takes: {
    conductorDiameter: { unit: "in", symbol: "d", about: "diameter of the wire", above: 0, usual: [0.001, 2] },
  },
  constants: {
    oneMil: { value: "0.001", unit: "in", symbol: "mil", about: "one mil", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
    circularMil: { value: "1", unit: "cmil", symbol: "cmil", about: "area of a circle of one mil", source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }] },
  },
  gives: { unit: "cmil", symbol: "A" },
  expression: "(conductorDiameter / oneMil) ^ 2 * circularMil",
  source: [{ in: "ASTM B258:undated", clause: "definition of the gauge", grade: "reproduced", seen: "liquisearch wire gauge page:undated, formula" }],
});
