import { table } from "../../../formula/index.js";

/**
 * Factor for a group of circuits or multi-core cables that touch.
 *
 * @function
 * @example
 * ```ts
 * import { iec60364_5_52_2009_b_52_17 } from "pv-to-grid/conductor";
 * iec60364_5_52_2009_b_52_17({ circuits: 3, grouping: "bunched" }).text; // "0.7"
 * ```
 */
export const iec60364_5_52_2009_b_52_17 = /* @__PURE__ */ table({
  id: "conductor/iec-60364-5-52-2009-b-52-17", about: "factor for a group of circuits or multi-core cables that touch",
  rows: { name: "circuits", unit: "1", symbol: "n" }, rowRule: "next above",
  columns: { grouping: ["bunched", "single layer on a wall", "single layer under a ceiling", "single layer on a perforated tray", "single layer on a ladder"] },
  gives: { unit: "1", symbol: "k_g" },
  source: [{ in: "IEC 60364-5-52:2009", clause: "annex B, table B.52.17", grade: "copied" }],
  differences: [
    { cell: "5 | single layer on a ladder", ships: "0.8", others: "0.79", why: "one transcription prints 0.79 for five circuits; the others print 0.80" },
  ],
  note: "a single layer needs no further reduction beyond nine circuits",
  cells: `
    1   1     1     0.95  1     1
    2   0.8   0.85  0.81  0.88  0.87
    3   0.7   0.79  0.72  0.82  0.82
    4   0.65  0.75  0.68  0.77  0.8
    5   0.6   0.73  0.66  0.75  0.8
    6   0.57  0.72  0.64  0.73  0.79
    7   0.54  0.72  0.63  0.73  0.79
    8   0.52  0.71  0.62  0.72  0.78
    9   0.5   0.7   0.61  0.72  0.78
    12  0.45  –     –     –     –
    16  0.41  –     –     –     –
    20  0.38  –     –     –     –
  `,
});
