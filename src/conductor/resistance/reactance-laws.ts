import { formula } from "../../formula/index.js";

/**
 * Reactance per length of a conductor by the spacing of the conductors.
 *
 * @function
 * @example
 * ```ts
 * import { reactanceBySpacing } from "pv-to-grid/conductor";
 * reactanceBySpacing({ frequency: "50 Hz", spacing: "20 mm", conductorDiameter: "10 mm" }).in("Ω/km").show(); // "0.1028 Ω/km"
 * ```
 */
export const reactanceBySpacing = /* @__PURE__ */ formula({
  id: "conductor/reactance-by-spacing", about: "reactance per length of a conductor by the spacing of the conductors",
  takes: {
    frequency: { unit: "Hz", symbol: "f", about: "frequency", above: 0, to: 400, usual: [16, 60] },
    spacing: { unit: "mm", symbol: "s", about: "axial spacing of the conductors; 1.26 times the spacing for three in a flat row", above: 0, usual: [2, 2000] },
    conductorDiameter: { unit: "mm", symbol: "d", about: "diameter of the conductor", above: 0, usual: [0.5, 60] },
  },
  constants: {
    oneHertz: { value: "1", unit: "Hz", symbol: "Hz", about: "one hertz", source: [{ in: "common practice", clause: "unit of frequency", grade: "common-practice" }] },
    internalInductance: { value: "0.00000005", unit: "Ω/m", symbol: "K", about: "internal inductance of a solid conductor, at one hertz over 2π", source: [{ in: "Shahin cable parameters:undated", clause: "inductance", grade: "original" }] },
    fieldInductance: { value: "0.0000002", unit: "Ω/m", symbol: "k", about: "field constant, at one hertz over 2π", source: [{ in: "Shahin cable parameters:undated", clause: "inductance", grade: "original" }] },
  },
  requires: [{ that: "2 * spacing > conductorDiameter", because: "conductors cannot lie inside each other" }],
  gives: { unit: "Ω/m", symbol: "X" },
  expression: "2 * pi * frequency / oneHertz * (internalInductance + fieldInductance * log(2 * spacing / conductorDiameter))",
  source: [{ in: "Shahin cable parameters:undated", clause: "inductance", grade: "original" }],
  unproven: { because: "no publication found", sought: "printed reactances with spacing and diameter" },
});

/**
 * Reactance per length at another frequency.
 *
 * @function
 * @example
 * ```ts
 * import { reactanceAtFrequency } from "pv-to-grid/conductor";
 * reactanceAtFrequency({ reactancePerLength: "0.08 Ω/km", frequency: "60 Hz" }).in("Ω/km").text; // "0.096"
 * ```
 */
export const reactanceAtFrequency = /* @__PURE__ */ formula({
  id: "conductor/reactance-at-frequency", about: "reactance per length at another frequency",
  takes: {
    reactancePerLength: { unit: "Ω/m", symbol: "X_50", about: "reactance per length at 50 Hz", from: 0, usual: [0, 0.001] },
    frequency: { unit: "Hz", symbol: "f", about: "frequency", above: 0, to: 400, usual: [16, 60] },
  },
  constants: {
    tableFrequency: { value: "50", unit: "Hz", symbol: "f_50", about: "frequency of the tabulated reactance", source: [{ in: "common practice", clause: "tables of 50 Hz practice", grade: "common-practice" }] },
  },
  gives: { unit: "Ω/m", symbol: "X" },
  expression: "reactancePerLength * frequency / tableFrequency",
  source: [{ in: "Electrical Engineering Toolbox page:2016", clause: "reactance at 60 Hz", grade: "original" }],
  unproven: { because: "no publication found", sought: "reactances at both frequencies" },
});
