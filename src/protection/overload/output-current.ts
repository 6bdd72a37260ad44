import { formula } from "../../formula/index.js";

/**
 * Output current of a three-phase inverter at its apparent power and nominal voltage. @function
 *
 * @example
 * ```ts
 * import { threePhaseOutputCurrent } from "pv-to-grid/protection";
 * threePhaseOutputCurrent({ apparentPower: "15 kVA", lineToLine: "400 V" }).show({ digits: 5 }); // "21.651 A"
 * ```
 */
export const threePhaseOutputCurrent = /* @__PURE__ */ formula({
  id: "protection/three-phase-output-current",
  about: "output current of a three-phase inverter at its apparent power and nominal voltage",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of the inverter", above: 0, usual: [100, 10000000] },
    lineToLine: { unit: "V", symbol: "U_n", about: "nominal voltage between lines", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "A", symbol: "I" },
  expression: "apparentPower / (sqrt(3) * lineToLine)",
  source: [{ in: "common practice", clause: "definition of three-phase apparent power", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Output current of a single-phase inverter at its apparent power and nominal voltage. @function
 *
 * @example
 * ```ts
 * import { singlePhaseOutputCurrent } from "pv-to-grid/protection";
 * singlePhaseOutputCurrent({ apparentPower: "4.6 kVA", terminalVoltage: "230 V" }).text; // "20"
 * ```
 */
export const singlePhaseOutputCurrent = /* @__PURE__ */ formula({
  id: "protection/single-phase-output-current",
  about: "output current of a single-phase inverter at its apparent power and nominal voltage",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of the inverter", above: 0, usual: [100, 10000000] },
    terminalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between its two terminals", above: 0, usual: [90, 1000] },
  },
  gives: { unit: "A", symbol: "I" },
  expression: "apparentPower / terminalVoltage",
  source: [{ in: "common practice", clause: "definition of single-phase apparent power", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Largest output current of a three-phase inverter where its maker states none: at a voltage ten per cent low. @function
 *
 * @example
 * ```ts
 * import { largestThreePhaseOutputCurrent } from "pv-to-grid/protection";
 * largestThreePhaseOutputCurrent({ apparentPower: "15 kVA", lineToLine: "400 V" }).show({ digits: 5 }); // "24.056 A"
 * ```
 */
export const largestThreePhaseOutputCurrent = /* @__PURE__ */ formula({
  id: "protection/largest-three-phase-output-current",
  about: "largest output current of a three-phase inverter where its maker states none: at a voltage ten per cent low",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of the inverter", above: 0, usual: [100, 10000000] },
    lineToLine: { unit: "V", symbol: "U_n", about: "nominal voltage between lines", above: 0, usual: [100, 1000] },
  },
  constants: {
    lowestSupplyShare: {
      value: "0.9",
      unit: "1",
      symbol: "u",
      about: "lowest voltage of the supply band over its nominal voltage",
      source: [{ in: "EN 50160:2010", clause: "4.2.2", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_max" },
  expression: "apparentPower / (sqrt(3) * lowestSupplyShare * lineToLine)",
  source: [{ in: "common practice", clause: "full apparent power at the lowest supply voltage", grade: "common-practice" }],
  unproven: { because: "composition only" },
});

/**
 * Largest output current of a single-phase inverter where its maker states none: at a voltage ten per cent low. @function
 *
 * @example
 * ```ts
 * import { largestSinglePhaseOutputCurrent } from "pv-to-grid/protection";
 * largestSinglePhaseOutputCurrent({ apparentPower: "4.6 kVA", terminalVoltage: "230 V" }).show({ digits: 4 }); // "22.22 A"
 * ```
 */
export const largestSinglePhaseOutputCurrent = /* @__PURE__ */ formula({
  id: "protection/largest-single-phase-output-current",
  about: "largest output current of a single-phase inverter where its maker states none: at a voltage ten per cent low",
  takes: {
    apparentPower: { unit: "VA", symbol: "S", about: "apparent power of the inverter", above: 0, usual: [100, 10000000] },
    terminalVoltage: { unit: "V", symbol: "U_n", about: "nominal voltage between its two terminals", above: 0, usual: [90, 1000] },
  },
  constants: {
    lowestSupplyShare: {
      value: "0.9",
      unit: "1",
      symbol: "u",
      about: "lowest voltage of the supply band over its nominal voltage",
      source: [{ in: "EN 50160:2010", clause: "4.2.2", grade: "memory" }],
    },
  },
  gives: { unit: "A", symbol: "I_max" },
  expression: "apparentPower / (lowestSupplyShare * terminalVoltage)",
  source: [{ in: "common practice", clause: "full apparent power at the lowest supply voltage", grade: "common-practice" }],
  unproven: { because: "composition only" },
});
