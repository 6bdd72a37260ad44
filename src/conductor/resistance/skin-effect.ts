import { formula } from "../../formula/index.js";

/**
 * Argument of the skin effect, squared.
 *
 * @function
 * @example
 * ```ts
 * import { skinEffectArgument } from "pv-to-grid/conductor";
 * skinEffectArgument({ resistancePerLength: "0.0602 Ω/km", frequency: "50 Hz", skinConstant: 1 }).show(); // "2.087"
 * ```
 */
export const skinEffectArgument = /* @__PURE__ */ formula({
  id: "conductor/skin-effect-argument", about: "argument of the skin effect, squared",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "R'", about: "d.c. resistance per length at the temperature", above: 0, usual: [0.00001, 0.1] },
    frequency: { unit: "Hz", symbol: "f", about: "frequency", above: 0, to: 400, usual: [16, 60] },
    skinConstant: { unit: "1", symbol: "k_s", about: "constant of the conductor's make; 1 for round stranded or solid conductors", above: 0, to: 2 },
  },
  constants: {
    oneHertz: { value: "1", unit: "Hz", symbol: "Hz", about: "one hertz", source: [{ in: "common practice", clause: "unit of frequency", grade: "common-practice" }] },
    fieldConstant: { value: "0.0000001", unit: "Ω/m", symbol: "10⁻⁷ Ω/m", about: "field constant of free space over 4π, at one hertz", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "x_s²" },
  expression: "2 ^ 3 * pi * frequency / oneHertz * fieldConstant * skinConstant / resistancePerLength",
  source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "printed intermediate values of IEC 60287 calculations" },
});

/**
 * Rise of resistance by the skin effect.
 *
 * @function
 * @example
 * ```ts
 * import { skinEffectFactor } from "pv-to-grid/conductor";
 * skinEffectFactor({ argumentSquared: "2.087" }).show(); // "0.02228"
 * ```
 */
export const skinEffectFactor = /* @__PURE__ */ formula({
  id: "conductor/skin-effect-factor", about: "rise of resistance by the skin effect",
  takes: {
    argumentSquared: { unit: "1", symbol: "x_s²", about: "argument of the skin effect, squared", from: 0, usual: [0, 50] },
  },
  constants: {
    skinLowLimit: { value: "2.8", unit: "1", symbol: "x_1", about: "argument up to which the first law holds", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinLowBase: { value: "192", unit: "1", symbol: "c_1", about: "constant of the first law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinLowSlope: { value: "0.8", unit: "1", symbol: "c_2", about: "constant of the first law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinHighLimit: { value: "3.8", unit: "1", symbol: "x_2", about: "argument up to which the second law holds", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinMiddleQuadratic: { value: "0.0563", unit: "1", symbol: "c_3", about: "constant of the second law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinMiddleLinear: { value: "0.0177", unit: "1", symbol: "c_4", about: "constant of the second law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinMiddleBase: { value: "0.136", unit: "1", symbol: "c_5", about: "constant of the second law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinHighLinear: { value: "0.354", unit: "1", symbol: "c_6", about: "constant of the third law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    skinHighBase: { value: "0.733", unit: "1", symbol: "c_7", about: "constant of the third law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "y_s" },
  expression: "argumentSquared <= skinLowLimit ^ 2 ? argumentSquared ^ 2 / (skinLowBase + skinLowSlope * argumentSquared ^ 2) : argumentSquared <= skinHighLimit ^ 2 ? skinMiddleQuadratic * argumentSquared - skinMiddleLinear * sqrt(argumentSquared) - skinMiddleBase : skinHighLinear * sqrt(argumentSquared) - skinHighBase",
  source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "printed skin effect factors of IEC 60287 calculations" },
});

/**
 * Rise of resistance by the proximity of three conductors.
 *
 * @function
 * @example
 * ```ts
 * import { proximityEffectOfThree } from "pv-to-grid/conductor";
 * proximityEffectOfThree({ argumentSquared: "2.087", diameterOverSpacing: "0.85" }).show(); // "0.06862"
 * ```
 */
export const proximityEffectOfThree = /* @__PURE__ */ formula({
  id: "conductor/proximity-effect-of-three", about: "rise of resistance by the proximity of three conductors",
  takes: {
    argumentSquared: { unit: "1", symbol: "x_p²", about: "argument of the proximity effect, squared", from: 0, to: 7.84 },
    diameterOverSpacing: { unit: "1", symbol: "d_c/s", about: "diameter of the conductors over their axial spacing", above: 0, to: 1 },
  },
  constants: {
    proximityBase: { value: "192", unit: "1", symbol: "c_1", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximitySlope: { value: "0.8", unit: "1", symbol: "c_2", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximityFirst: { value: "0.312", unit: "1", symbol: "c_3", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximitySecond: { value: "1.18", unit: "1", symbol: "c_4", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximityThird: { value: "0.27", unit: "1", symbol: "c_5", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "y_p" },
  expression: "argumentSquared ^ 2 / (proximityBase + proximitySlope * argumentSquared ^ 2) * diameterOverSpacing ^ 2 * (proximityFirst * diameterOverSpacing ^ 2 + proximitySecond / (argumentSquared ^ 2 / (proximityBase + proximitySlope * argumentSquared ^ 2) + proximityThird))",
  source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }],
  note: "for an argument up to 2.8",
  unproven: { because: "no publication found", sought: "printed proximity effect factors of IEC 60287 calculations" },
});

/**
 * Rise of resistance by the proximity of two conductors.
 *
 * @function
 * @example
 * ```ts
 * import { proximityEffectOfTwo } from "pv-to-grid/conductor";
 * proximityEffectOfTwo({ argumentSquared: "2.087", diameterOverSpacing: "0.85" }).show(); // "0.04668"
 * ```
 */
export const proximityEffectOfTwo = /* @__PURE__ */ formula({
  id: "conductor/proximity-effect-of-two", about: "rise of resistance by the proximity of two conductors",
  takes: {
    argumentSquared: { unit: "1", symbol: "x_p²", about: "argument of the proximity effect, squared", from: 0, to: 7.84 },
    diameterOverSpacing: { unit: "1", symbol: "d_c/s", about: "diameter of the conductors over their axial spacing", above: 0, to: 1 },
  },
  constants: {
    proximityBase: { value: "192", unit: "1", symbol: "c_1", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximitySlope: { value: "0.8", unit: "1", symbol: "c_2", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
    proximityWeight: { value: "2.9", unit: "1", symbol: "c_3", about: "constant of the law", source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }] },
  },
  gives: { unit: "1", symbol: "y_p" },
  expression: "argumentSquared ^ 2 / (proximityBase + proximitySlope * argumentSquared ^ 2) * diameterOverSpacing ^ 2 * proximityWeight",
  source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }],
  note: "for an argument up to 2.8",
  unproven: { because: "no publication found", sought: "printed proximity effect factors of IEC 60287 calculations" },
});

/**
 * A.c. resistance per length of a conductor.
 *
 * @function
 * @example
 * ```ts
 * import { alternatingResistance } from "pv-to-grid/conductor";
 * alternatingResistance({ resistancePerLength: "0.1 Ω/km", skinEffect: "0.02", proximityEffect: "0.03" }).in("Ω/km").text; // "0.105"
 * ```
 */
export const alternatingResistance = /* @__PURE__ */ formula({
  id: "conductor/alternating-resistance", about: "a.c. resistance per length of a conductor",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "R'", about: "d.c. resistance per length at the temperature", above: 0, usual: [0.00001, 0.1] },
    skinEffect: { unit: "1", symbol: "y_s", about: "rise by the skin effect", from: 0, to: 5 },
    proximityEffect: { unit: "1", symbol: "y_p", about: "rise by the proximity effect", from: 0, to: 5 },
  },
  gives: { unit: "Ω/m", symbol: "R" },
  expression: "resistancePerLength * (1 + skinEffect + proximityEffect)",
  source: [{ in: "IEC 60287-1-1:2006", clause: "2.1", grade: "memory" }],
  unproven: { because: "no publication found", sought: "printed a.c. resistances with their d.c. resistances and effects" },
});
