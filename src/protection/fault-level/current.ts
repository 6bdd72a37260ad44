import { formula, table } from "../../formula/index.js";

/**
 * Driving voltage between lines during a fault. @function
 *
 * @example
 * ```ts
 * import { voltageDuringFault } from "pv-to-grid/protection";
 * voltageDuringFault({ faultVoltageFactor: "1.1", lineToLine: "400 V" }).text; // "440"
 * ```
 */
export const voltageDuringFault = /* @__PURE__ */ formula({
  id: "protection/voltage-during-fault",
  about: "driving voltage between lines during a fault",
  takes: {
    faultVoltageFactor: { unit: "1", symbol: "c", about: "voltage during the fault over the nominal one", above: 0, to: 1.1 },
    lineToLine: { unit: "V", symbol: "U_n", about: "nominal voltage between lines", above: 0, usual: [100, 1000] },
  },
  gives: { unit: "V", symbol: "c U" },
  expression: "faultVoltageFactor * lineToLine",
  source: [{ in: "IEC 60909-0:2016", clause: "table 1, equation 33", grade: "memory" }],
  unproven: { because: "composition only" },
});

/**
 * Symmetrical three-phase fault current; the neutral plays no part. @function
 *
 * @example
 * ```ts
 * import { threePhaseFaultCurrent } from "pv-to-grid/protection";
 * threePhaseFaultCurrent({ faultVoltage: "380 V", phaseImpedance: "4.5539 mΩ" }).show(); // "48180 A"
 * ```
 */
export const threePhaseFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/three-phase-fault-current",
  about: "symmetrical three-phase fault current; the neutral plays no part",
  takes: {
    faultVoltage: { unit: "V", symbol: "c U", about: "driving voltage between lines during the fault", above: 0, usual: [50, 1200] },
    phaseImpedance: { unit: "Ω", symbol: "Z", about: "impedance of the path, a phase", above: 0, usual: [0.00001, 100] },
  },
  gives: { unit: "A", symbol: "I_k3" },
  expression: "faultVoltage / (sqrt(3) * phaseImpedance)",
  source: [
    { in: "Short-circuit sheet 380 V:2025", clause: "rows HV source to DB-HVAC3", grade: "copied" },
    { in: "IEC 60909-0:2016", clause: "table 1, equation 33", grade: "memory" },
  ],
  unproven: { because: "no publication found", sought: "three-phase fault at a board; only an upload was found" },
});

/**
 * Three-phase fault current from the current of a line-to-neutral fault whose line and neutral are alike. @function
 *
 * @example
 * ```ts
 * import { threePhaseFromLoopCurrent } from "pv-to-grid/protection";
 * threePhaseFromLoopCurrent({ lineToNeutralFault: "3 kA" }).text; // "6000"
 * ```
 */
export const threePhaseFromLoopCurrent = /* @__PURE__ */ formula({
  id: "protection/three-phase-from-loop-current",
  about: "three-phase fault current from the current of a line-to-neutral fault whose line and neutral are alike",
  takes: {
    lineToNeutralFault: { unit: "A", symbol: "I_k1", about: "current of a fault between line and neutral", above: 0, usual: [1, 200000] },
  },
  gives: { unit: "A", symbol: "I_k3" },
  expression: "2 * lineToNeutralFault",
  source: [{ in: "common practice", clause: "line and neutral of equal impedance", grade: "common-practice" }],
  unproven: { because: "definition" },
});

/**
 * Largest fault current with what the inverters add. @function
 *
 * @example
 * ```ts
 * import { faultCurrentWithInverters } from "pv-to-grid/protection";
 * faultCurrentWithInverters({ gridFaultCurrent: "6 kA", inverterCurrents: ["24 A", "24 A"] }).text; // "6048"
 * ```
 */
export const faultCurrentWithInverters = /* @__PURE__ */ formula({
  id: "protection/fault-current-with-inverters",
  about: "largest fault current with what the inverters add",
  takes: {
    gridFaultCurrent: { unit: "A", symbol: "I_k,grid", about: "largest fault current from the grid", from: 0, usual: [1, 500000] },
    inverterCurrents: { each: "A", symbol: "I_i", about: "largest output current of each inverter", from: 0 },
  },
  gives: { unit: "A", symbol: "I_k,max" },
  expression: "gridFaultCurrent + sum(inverterCurrents)",
  source: [{ in: "common practice", clause: "a converter adds about its largest output current", grade: "common-practice" }],
  unproven: { because: "composition only" },
  note: "plain addition, so at least the true value",
});

/**
 * Peak factor of a fault current. @function
 *
 * @example
 * ```ts
 * import { peakFactorOf } from "pv-to-grid/protection";
 * peakFactorOf({ phaseResistance: "16.95 mΩ", phaseReactance: "5.9 mΩ" }).show(); // "1.02"
 * ```
 */
export const peakFactorOf = /* @__PURE__ */ formula({
  id: "protection/peak-factor-of",
  about: "peak factor of a fault current",
  takes: {
    phaseResistance: { unit: "Ω", symbol: "R", about: "resistance of the path, a phase", from: 0, usual: [0, 100] },
    phaseReactance: { unit: "Ω", symbol: "X", about: "reactance of the path, a phase", from: 0, usual: [0, 100] },
  },
  constants: {
    peakBase: {
      value: "1.02", unit: "1", symbol: "1.02", about: "number of the peak factor",
      source: [
        { in: "IEC 60909-0:2016", clause: "8.1, equation 57", grade: "copied", seen: "Short-circuit sheet 1500 kVA:undated, second stage" },
      ],
    },
    peakSwing: {
      value: "0.98", unit: "1", symbol: "0.98", about: "number of the peak factor",
      source: [
        { in: "IEC 60909-0:2016", clause: "8.1, equation 57", grade: "copied", seen: "Short-circuit sheet 1500 kVA:undated, second stage" },
      ],
    },
  },
  requires: [{ that: "phaseReactance > 0", because: "the ratio of resistance to reactance must exist" }],
  gives: { unit: "1", symbol: "κ" },
  expression: "peakBase + peakSwing * exp(-3 * phaseResistance / phaseReactance)",
  source: [
    { in: "IEC 60909-0:2016", clause: "8.1, equation 57", grade: "copied", seen: "Short-circuit sheet 1500 kVA:undated, second stage" },
  ],
  unproven: { because: "no publication found", sought: "peak factor with R and X printed; only an upload was found" },
});

/**
 * Peak of a fault current. @function
 *
 * @example
 * ```ts
 * import { peakFaultCurrent } from "pv-to-grid/protection";
 * peakFaultCurrent({ peakFactor: "1.02", faultCurrentAt: "13.51 kA" }).show(); // "19490 A"
 * ```
 */
export const peakFaultCurrent = /* @__PURE__ */ formula({
  id: "protection/peak-fault-current",
  about: "peak of a fault current",
  takes: {
    peakFactor: { unit: "1", symbol: "κ", about: "peak factor", from: 1, to: 2 },
    faultCurrentAt: { unit: "A", symbol: "I_k", about: "symmetrical fault current", above: 0, usual: [1, 500000] },
  },
  gives: { unit: "A", symbol: "i_p" },
  expression: "peakFactor * sqrt(2) * faultCurrentAt",
  source: [
    { in: "IEC 60909-0:2016", clause: "8.1, equation 56", grade: "copied", seen: "Short-circuit sheet 1500 kVA:undated, second stage" },
  ],
  unproven: { because: "no publication found", sought: "peak of a fault current; only an upload was found, which is disputed" },
});

/**
 * Voltage factor of low-voltage networks. @function
 *
 * @example
 * ```ts
 * import { iec60909_2016_voltage_factors } from "pv-to-grid/protection";
 * iec60909_2016_voltage_factors({ tolerance: "10 %", fault: "largest" }).text; // "1.1"
 * ```
 */
export const iec60909_2016_voltage_factors = /* @__PURE__ */ table({
  id: "protection/iec-60909-2016-voltage-factors",
  about: "voltage factor of low-voltage networks",
  rows: { name: "tolerance", names: "in the first column" },
  rowRule: "exact",
  columns: { fault: ["largest", "smallest"] },
  gives: { unit: "1", symbol: "c" },
  source: [{ in: "IEC 60909-0:2016", clause: "table 1", grade: "memory" }],
  cells: `
    6 %   1.05  0.95
    10 %  1.10  0.95
  `,
});
