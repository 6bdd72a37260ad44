import { formula } from "../../formula/index.js";

/**
 * Voltage at the point of infeed, exactly, from the voltage at the other end of the impedance.
 *
 * @function
 * @example
 * ```ts
 * import { voltageAtInfeed } from "pv-to-grid/grid";
 * voltageAtInfeed({ networkVoltage: "400 V", activePower: "10 kW", reactivePower: "0 var", resistance: "0.2 ohm", reactance: "0 ohm" }).show({ digits: 7 }); // "404.939 V"
 * ```
 */
export const voltageAtInfeed = /* @__PURE__ */ formula({
  id: "grid/voltage-at-infeed",
  about: "voltage at the point of infeed, exactly, from the voltage at the other end of the impedance",
  takes: {
    networkVoltage: { unit: "V", symbol: "U_1", about: "voltage at the end of the impedance that the network holds", above: 0, usual: [50, 1000] },
    activePower: { unit: "W", symbol: "P", about: "active power at the point of infeed, fed towards the grid where positive", usual: [-1e9, 1e9] },
    reactivePower: { unit: "var", symbol: "Q", about: "reactive power at the point of infeed, injected where positive, absorbed where negative", usual: [-1e9, 1e9] },
    resistance: { unit: "Ω", symbol: "R", about: "resistance of one line conductor, or of the loop where the connection is single-phase", from: 0, usual: [0, 100] },
    reactance: { unit: "Ω", symbol: "X", about: "reactance of one line conductor, or of the loop where the connection is single-phase", usual: [-100, 100] },
  },
  gives: { unit: "V", symbol: "U_2" },
  expression:
    "sqrt((networkVoltage ^ 2 + 2 * (activePower * resistance + reactivePower * reactance) + sqrt((networkVoltage ^ 2 + 2 * (activePower * resistance + reactivePower * reactance)) ^ 2 - 2 * 2 * (resistance ^ 2 + reactance ^ 2) * (activePower ^ 2 + reactivePower ^ 2))) / 2)",
  requires: [
    {
      that: "networkVoltage ^ 2 + 2 * (activePower * resistance + reactivePower * reactance) >= 2 * sqrt((resistance ^ 2 + reactance ^ 2) * (activePower ^ 2 + reactivePower ^ 2))",
      because: "no voltage carries that power through that impedance",
    },
  ],
  source: [{ in: "common practice", clause: "two-bus power flow, the higher of its two solutions", grade: "common-practice" }],
  unproven: { because: "no publication found", sought: "two-bus power flow with printed P, Q, R, X and both voltages" },
});
