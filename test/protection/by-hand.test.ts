import { expect, it } from "vitest";
import * as protection from "../../src/protection/index.js";
import type { Quantity } from "../../src/quantity/index.js";

// Each value was computed apart from the library, in 30 digits, from the formula as its source has it.
const rows: readonly (readonly [string, () => Quantity, string])[] = [
  [
    "three-phase output",
    () => protection.threePhaseOutputCurrent({ apparentPower: "15 kVA", lineToLine: "400 V" }),
    "21.650635094611",
  ],
  [
    "largest three-phase output",
    () => protection.largestThreePhaseOutputCurrent({ apparentPower: "15 kVA", lineToLine: "400 V" }),
    "24.056261216234",
  ],
  [
    "single-phase output",
    () => protection.singlePhaseOutputCurrent({ apparentPower: "4.6 kVA", terminalVoltage: "230 V" }),
    "20",
  ],
  [
    "largest single-phase output",
    () => protection.largestSinglePhaseOutputCurrent({ apparentPower: "4.6 kVA", terminalVoltage: "230 V" }),
    "22.222222222222",
  ],
  [
    "transformer current",
    () => protection.transformerRatedCurrent({ transformerPower: "15 kVA", noLoadVoltage: "400 V" }),
    "21.650635094611",
  ],
  [
    "transformer fault",
    () => protection.transformerFaultCurrent({ transformerCurrent: "550 A", shortCircuitVoltage: "4 %" }),
    "13750",
  ],
  [
    "transformer resistance",
    () =>
      protection.transformerResistance({ loadLoss: "4.8 kW", referredVoltage: "400 V", transformerPower: "400 kVA" }),
    "0.0048",
  ],
  [
    "transformer reactance",
    () => protection.transformerReactance({ transformerImpedanceValue: "24 mΩ", transformerResistanceValue: "4.8 mΩ" }),
    "0.023515101530719",
  ],
  [
    "transformer correction",
    () => protection.transformerCorrection({ highestVoltageFactor: "1.05", relativeReactance: "0.06" }),
    "0.96283783783784",
  ],
  [
    "impedance of a stated current",
    () => protection.impedanceFromFaultCurrent({ faultVoltage: "400 V", faultCurrentAt: "6 kA" }),
    "0.038490017945975",
  ],
  [
    "path",
    () => protection.pathImpedance({ phaseResistance: "3 mΩ", phaseReactance: "1.2 mΩ" }).in("mΩ"),
    "3.2310988842807",
  ],
  [
    "voltage during a fault",
    () => protection.voltageDuringFault({ faultVoltageFactor: "1.1", lineToLine: "400 V" }),
    "440",
  ],
  [
    "three-phase fault",
    () => protection.threePhaseFaultCurrent({ faultVoltage: "440 V", phaseImpedance: "20 mΩ" }),
    "12701.705922172",
  ],
  ["from a loop", () => protection.threePhaseFromLoopCurrent({ lineToNeutralFault: "3 kA" }), "6000"],
  [
    "with inverters",
    () => protection.faultCurrentWithInverters({ gridFaultCurrent: "6 kA", inverterCurrents: ["24 A", "8 A"] }),
    "6032",
  ],
  ["peak factor", () => protection.peakFactorOf({ phaseResistance: "2 mΩ", phaseReactance: "5 mΩ" }), "1.315170327674"],
  ["peak", () => protection.peakFaultCurrent({ peakFactor: "1.5", faultCurrentAt: "10 kA" }), "21213.203435596"],
  ["selective fuse", () => protection.selectiveFuseRating({ fuseBehind: "35 A" }), "56"],
  ["withstand", () => protection.withstandEnergy({ adiabaticFactor: "115", section: "4 mm²" }), "211600"],
  ["fault energy", () => protection.faultEnergy({ faultCurrent: "800 A", disconnectionTime: "0.1 s" }), "64000"],
  [
    "longest time",
    () => protection.longestFaultTime({ adiabaticFactor: "115", section: "4 mm²", faultCurrent: "800 A" }),
    "0.330625",
  ],
  ["corrected rating", () => protection.correctedDeviceRating({ ratedCurrent: "25 A", ambientFactor: "0.9" }), "22.5"],
  ["uncorrected load", () => protection.uncorrectedDeviceLoad({ ratedCurrent: "25 A" }), "20"],
  ["tolerated overload", () => protection.toleratedOverload({ ampacity: "35 A" }), "50.75"],
  ["device of NEC", () => protection.necDeviceCurrent({ designCurrent: "32 A" }), "40"],
  [
    "smallest fault",
    () =>
      protection.smallestEarthFaultCurrent({
        lineToEarth: "230 V",
        faultVoltageFactor: "0.95",
        loopImpedance: "0.7 Ω",
      }),
    "312.14285714286",
  ],
  [
    "largest loop",
    () =>
      protection.largestLoopImpedanceAtLowVoltage({
        lineToEarth: "230 V",
        faultVoltageFactor: "0.95",
        operatingCurrent: "160 A",
      }),
    "1.365625",
  ],
  ["measured, British", () => protection.measuredLoopLimit({ largestLoop: "1.365 Ω" }), "1.092"],
  ["measured, verification", () => protection.measuredLoopLimitOfVerification({ largestLoop: "1.5 Ω" }), "1"],
  [
    "cable resistance",
    () =>
      protection.cablePhaseResistance({ resistancePerLength: "2 mΩ/m", length: "30 m", parallelConductorsOfPhase: 2 }),
    "0.03",
  ],
  [
    "cable reactance",
    () =>
      protection.cablePhaseReactance({ reactancePerLength: "0.1 mΩ/m", length: "30 m", parallelConductorsOfPhase: 2 }),
    "0.0015",
  ],
  [
    "loop by addition",
    () =>
      protection.loopImpedanceByAddition({
        externalImpedance: "0.4 Ω",
        loopResistancePerLength: "10 mΩ/m",
        length: "30 m",
      }),
    "0.7",
  ],
  [
    "longest circuit by addition",
    () =>
      protection.longestCircuitByAddition({
        largestLoop: "1.4 Ω",
        externalImpedance: "0.4 Ω",
        loopResistancePerLength: "10 mΩ/m",
      }),
    "100",
  ],
  [
    "longest circuit, mostly resistance",
    () =>
      protection.longestCircuit({
        largestLoop: "1.366 Ω",
        sourceResistance: "0.4 Ω",
        sourceReactance: "0.12 Ω",
        loopResistancePerLength: "12 mΩ/m",
        loopReactancePerLength: "0.2 mΩ/m",
      }),
    "79.934526479518",
  ],
  [
    "longest circuit, with reactance",
    () =>
      protection.longestCircuit({
        largestLoop: "0.3 Ω",
        sourceResistance: "0.1 Ω",
        sourceReactance: "0.05 Ω",
        loopResistancePerLength: "1 mΩ/m",
        loopReactancePerLength: "0.4 mΩ/m",
      }),
    "174.96129761992",
  ],
  [
    "touch voltage",
    () =>
      protection.touchVoltageDuringFault({
        protectiveResistance: "0.5 Ω",
        remainingEarthPath: "0.2 Ω",
        loopImpedance: "1.1 Ω",
        lineToLine: "400 V",
      }),
    "146.96188670281",
  ],
  [
    "conventional length",
    () =>
      protection.conventionalLength({
        lineToEarth: "230 V",
        conventionalSectionValue: "35 mm²",
        conventionalResistivity: "0.037",
        reactanceAllowance: "1.1",
        sectionRatio: "2",
        operatingCurrent: "400 A",
      }),
    "131.85913185913",
  ],
  ["sure trip of a setting", () => protection.magneticOperatingCurrent({ magneticSetting: "100 A" }), "120"],
  [
    "electrode",
    () => protection.largestElectrodeResistance({ touchVoltageLimit: "50 V", ratedResidualCurrent: "0.3 A" }),
    "166.66666666667",
  ],
  [
    "residual current",
    () => protection.largestResidualCurrent({ touchVoltageLimit: "50 V", electrodeResistance: "100 Ω" }),
    "0.5",
  ],
  ["leakage share", () => protection.leakageShare({ ratedResidualCurrent: "0.3 A" }), "0.09"],
  ["selective residual current", () => protection.selectiveResidualCurrent({ ratedResidualCurrent: "0.03 A" }), "0.09"],
  ["residual fault current", () => protection.residualOperatingCurrent({ ratedResidualCurrent: "0.3 A" }), "1.5"],
  ["both feeds", () => protection.bothFeeds({ supplyDevice: "35 A", sourceCurrents: ["8 A", "22 A"] }), "65"],
  ["sources together", () => protection.sourcesTogether({ sourceCurrents: ["8 A", "22 A"] }), "30"],
  ["larger feed, supply", () => protection.largerFeed({ supplyDevice: "35 A", sourceCurrents: ["8 A", "22 A"] }), "35"],
  [
    "larger feed, sources",
    () => protection.largerFeed({ supplyDevice: "25 A", sourceCurrents: ["8 A", "22 A"] }),
    "30",
  ],
];

const DIGITS = 12;

it.each(rows)("%s", (_, compute, expected) => {
  expect(compute().number.toPrecision(DIGITS)).toBe(Number(expected).toPrecision(DIGITS));
});
