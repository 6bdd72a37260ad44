import { formula } from "../../formula/index.js";

/**
 * Resistance of a conductor by its length. @function
 *
 * @example
 * ```ts
 * import { resistanceOfConductor } from "pv-to-grid/commissioning";
 * resistanceOfConductor({ resistancePerLength: "4.61 Ω/km", length: "18 m" }).text; // "0.08298"
 * ```
 */
export const resistanceOfConductor = /* @__PURE__ */ formula({
  id: "commissioning/resistance-of-conductor",
  about: "resistance of a conductor by its length",
  takes: {
    resistancePerLength: { unit: "Ω/m", symbol: "R'", about: "resistance per length", above: 0, usual: [0.00001, 0.1] },
    length: { unit: "m", symbol: "L", about: "length of the conductor", from: 0, usual: [0, 5000] },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "resistancePerLength * length",
  source: [{ in: "common practice", clause: "resistance by length", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Resistance that conductors in series should read from end to end. @function
 *
 * @example
 * ```ts
 * import { continuityResistance } from "pv-to-grid/commissioning";
 * continuityResistance({ resistances: ["0.083 Ω", "0.012 Ω"] }).text; // "0.095"
 * ```
 */
export const continuityResistance = /* @__PURE__ */ formula({
  id: "commissioning/continuity-resistance",
  about: "resistance that conductors in series should read from end to end",
  takes: {
    resistances: { each: "Ω", symbol: "R_i", about: "resistance of each conductor in series", from: 0 },
  },
  gives: { unit: "Ω", symbol: "R" },
  expression: "sum(resistances)",
  source: [{ in: "common practice", clause: "conductors in series", grade: "common-practice" }],
  unproven: { because: "composition only" },
  note: "with the test leads nulled",
});

/**
 * Highest reading of a continuity test that leaves no doubt about the joints. @function
 *
 * @example
 * ```ts
 * import { largestContinuity } from "pv-to-grid/commissioning";
 * largestContinuity({ continuity: "0.095 Ω", joints: "0.05 Ω" }).text; // "0.145"
 * ```
 */
export const largestContinuity = /* @__PURE__ */ formula({
  id: "commissioning/largest-continuity",
  about: "highest reading of a continuity test that leaves no doubt about the joints",
  takes: {
    continuity: { unit: "Ω", symbol: "R", about: "resistance that the conductors should read", from: 0, usual: [0, 100] },
    joints: { unit: "Ω", symbol: "R_J", about: "allowance for clamps and joints", from: 0, usual: [0, 1] },
  },
  gives: { unit: "Ω", symbol: "R_max" },
  expression: "continuity + joints",
  source: [{ in: "common practice", clause: "expected resistance and an allowance for joints", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Reading of a sound bonding connection, at most. @function
 *
 * @example
 * ```ts
 * import { jointAllowance } from "pv-to-grid/commissioning";
 * jointAllowance({}).text; // "0.05"
 * ```
 */
export const jointAllowance = /* @__PURE__ */ formula({
  id: "commissioning/joint-allowance",
  about: "reading of a sound bonding connection, at most",
  takes: {},
  constants: {
    jointResistance: { value: "0.05", unit: "Ω", symbol: "0.05 Ω", about: "resistance of a bonding connection", source: [{ in: "IET Guidance Note 3:undated", clause: "continuity of bonding conductors", grade: "memory" }] },
  },
  gives: { unit: "Ω", symbol: "R_J" },
  expression: "jointResistance",
  source: [{ in: "IET Guidance Note 3:undated", clause: "continuity of bonding conductors", grade: "memory" }],
  unproven: { because: "definition" },
});

/**
 * Current of a continuity test, at least. @function
 *
 * @example
 * ```ts
 * import { continuityTestCurrent } from "pv-to-grid/commissioning";
 * continuityTestCurrent({}).text; // "0.2"
 * ```
 */
export const continuityTestCurrent = /* @__PURE__ */ formula({
  id: "commissioning/continuity-test-current",
  about: "current of a continuity test, at least",
  takes: {},
  constants: {
    leastTestCurrent: { value: "0.2", unit: "A", symbol: "0.2 A", about: "least current of a continuity test", source: [{ in: "IEC 61557-4:undated", clause: "test current", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }] },
  },
  gives: { unit: "A", symbol: "I_test" },
  expression: "leastTestCurrent",
  source: [{ in: "IEC 61557-4:undated", clause: "test current", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }],
  unproven: { because: "definition" },
});

/**
 * Open-circuit voltage of the source of a continuity test, at least. @function
 *
 * @example
 * ```ts
 * import { continuitySourceVoltageLeast } from "pv-to-grid/commissioning";
 * continuitySourceVoltageLeast({}).text; // "4"
 * ```
 */
export const continuitySourceVoltageLeast = /* @__PURE__ */ formula({
  id: "commissioning/continuity-source-voltage-least",
  about: "open-circuit voltage of the source of a continuity test, at least",
  takes: {},
  constants: {
    leastSourceVoltage: { value: "4", unit: "V", symbol: "4 V", about: "least source voltage", source: [{ in: "IEC 61557-4:undated", clause: "source voltage", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }] },
  },
  gives: { unit: "V", symbol: "U_source,min" },
  expression: "leastSourceVoltage",
  source: [{ in: "IEC 61557-4:undated", clause: "source voltage", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }],
  unproven: { because: "definition" },
});

/**
 * Open-circuit voltage of the source of a continuity test, at most. @function
 *
 * @example
 * ```ts
 * import { continuitySourceVoltageLargest } from "pv-to-grid/commissioning";
 * continuitySourceVoltageLargest({}).text; // "24"
 * ```
 */
export const continuitySourceVoltageLargest = /* @__PURE__ */ formula({
  id: "commissioning/continuity-source-voltage-largest",
  about: "open-circuit voltage of the source of a continuity test, at most",
  takes: {},
  constants: {
    largestSourceVoltage: { value: "24", unit: "V", symbol: "24 V", about: "largest source voltage", source: [{ in: "IEC 61557-4:undated", clause: "source voltage", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }] },
  },
  gives: { unit: "V", symbol: "U_source,max" },
  expression: "largestSourceVoltage",
  source: [{ in: "IEC 61557-4:undated", clause: "source voltage", grade: "reproduced", seen: "Fluke Academy post 41:undated, body" }],
  unproven: { because: "definition" },
});
