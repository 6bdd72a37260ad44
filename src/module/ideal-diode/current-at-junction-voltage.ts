import { formula } from "../../formula/index.js";

/**
 * Current of a cell whose junction is at a voltage.
 *
 * @function
 * @example
 * ```ts
 * import { currentAtJunctionVoltage } from "pv-to-grid/module";
 * currentAtJunctionVoltage({ photocurrent: "3.4 A", saturationCurrent: "6e-10 A", thermalVoltage: "0.025707 V", junctionVoltage: "0.5 V", shuntResistance: "6.6 ohm" }).show({ digits: 3 }); // "3.16 A"
 * ```
 */
export const currentAtJunctionVoltage = /* @__PURE__ */ formula({
  id: "module/current-at-junction-voltage",
  about: "current of a cell whose junction is at a voltage",
  takes: {
    photocurrent: { unit: "A", symbol: "I_L", about: "photocurrent", above: 0, to: 100000 },
    saturationCurrent: { unit: "A", symbol: "I_0", about: "saturation current", above: 0, to: 1 },
    thermalVoltage: { unit: "V", symbol: "U_T", about: "thermal voltage, times the diode factor and the cells in series where they are not 1", from: 0.01, to: 100 },
    junctionVoltage: { unit: "V", symbol: "U_d", about: "voltage of one junction", from: -1, to: 5 },
    shuntResistance: { unit: "Ω", symbol: "R_sh", about: "shunt resistance of one cell", above: 0 },
  },
  requires: [{ that: "junctionVoltage <= 100 * thermalVoltage", because: "no junction carries a hundred thermal voltages" }],
  gives: { unit: "A", symbol: "I" },
  expression: "photocurrent - saturationCurrent * (exp(junctionVoltage / thermalVoltage) - 1) - junctionVoltage / shuntResistance",
  source: [{ in: "Masters:2004", clause: "example 8.4", grade: "memory" }],
  unproven: { because: "no publication found", sought: "worked examples in edited publications; the one held is recalled" },
});
