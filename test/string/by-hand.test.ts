import { expect, it } from "vitest";
import type { Quantity } from "../../src/quantity/index.js";
import * as string from "../../src/string/index.js";

// Each value was computed by hand from the formula as its source has it.
const rows: readonly (readonly [string, () => Quantity, string])[] = [
  ["string voltage", () => string.stringVoltage({ modules: 18, moduleVoltage: "43.2 V" }), "777.6"],
  [
    "voltage by factor",
    () => string.maximumVoltageByFactor({ modules: 12, openCircuitVoltage: "37.95 V", voltageFactor: "1.14" }),
    "519.156",
  ],
  [
    "voltage at the inverter",
    () => string.mppVoltageAtInverter({ modules: 10, mppVoltage: "27.4 V", voltageDrop: "3 %" }),
    "265.78",
  ],
  ["end of life", () => string.endOfLifeMppVoltage({ mppVoltage: "28 V", voltageLoss: "5 %" }), "26.6"],
  [
    "lower limit with margin",
    () => string.lowerLimitWithMargin({ lowerMppVoltage: "140 V", windowMargin: "1.1" }),
    "154",
  ],
  ["below the limit", () => string.voltageBelowLimit({ voltage: "951.2 V", voltageLimit: "1000 V" }), "48.8"],
  ["above the limit", () => string.voltageAboveLimit({ voltage: "260 V", voltageLimit: "200 V" }), "60"],
  ["longest", () => string.longestString({ voltageLimit: "400 V", moduleVoltage: "47.2 V" }), "8"],
  ["longest, on the limit", () => string.longestString({ voltageLimit: "472 V", moduleVoltage: "47.2 V" }), "10"],
  ["shortest", () => string.shortestString({ voltageLimit: "154 V", moduleVoltage: "26.6 V" }), "6"],
  ["shortest, on the limit", () => string.shortestString({ voltageLimit: "159.6 V", moduleVoltage: "26.6 V" }), "6"],
  ["parallel", () => string.parallelCurrent({ strings: 2, current: "5.02 A" }), "10.04"],
  ["sum", () => string.summedCurrent({ currents: ["13.4 A", "13.1 A"] }), "26.5"],
  ["maximum current", () => string.maximumCurrent({ shortCircuitCurrent: "11.49 A" }), "14.3625"],
  ["current factor", () => string.currentFactor({ currentCorrection: "1.08" }), "1.35"],
  [
    "maximum current by factor",
    () => string.maximumCurrentByFactor({ currentFactor: "1.35", shortCircuitCurrent: "14 A" }),
    "18.9",
  ],
  ["continuous", () => string.continuousCurrent({ maximumCurrent: "11 A" }), "13.75"],
  [
    "behind a device",
    () => string.stringCableCurrentBehindDevice({ ratedCurrent: "32 A", strings: 3, maximumCurrent: "17.5 A" }),
    "67",
  ],
  ["without a device", () => string.stringCableCurrentWithoutDevice({ strings: 4, maximumCurrent: "17.5 A" }), "52.5"],
  [
    "two without a device",
    () => string.stringCableCurrentWithoutDevice({ strings: 2, maximumCurrent: "17.5 A" }),
    "17.5",
  ],
  [
    "one without a device",
    () => string.stringCableCurrentWithoutDevice({ strings: 1, maximumCurrent: "17.5 A" }),
    "17.5",
  ],
  [
    "sub-array",
    () => string.subArrayCableCurrent({ ratedCurrent: "160 A", otherCurrents: "70 A", ownCurrent: "35 A" }),
    "230",
  ],
  [
    "sub-array, large",
    () => string.subArrayCableCurrent({ ratedCurrent: "0 A", otherCurrents: "20 A", ownCurrent: "35 A" }),
    "35",
  ],
  ["next rating", () => string.largestDeviceFor({ correctedAmpacity: "29.12 A", nextRating: "30 A" }), "30"],
  ["next rating of 800 A", () => string.largestDeviceFor({ correctedAmpacity: "780 A", nextRating: "800 A" }), "800"],
  [
    "next rating above 800 A",
    () => string.largestDeviceFor({ correctedAmpacity: "810 A", nextRating: "1000 A" }),
    "810",
  ],
  [
    "next rating just above 800 A",
    () => string.largestDeviceFor({ correctedAmpacity: "800.1 A", nextRating: "801 A" }),
    "800.1",
  ],
  ["lowest beside the highest", () => string.lowestParallelVoltage({ voltages: ["600 V", "580 V"] }), "570"],
  ["reverse", () => string.reverseCurrent({ strings: 4, shortCircuitCurrent: "12.28 A" }), "36.84"],
  [
    "largest reverse",
    () => string.largestReverseCurrent({ strings: 3, maximumCurrent: "6.25 A", backfeedCurrent: "2 A" }),
    "14.5",
  ],
  ["fuse, lower", () => string.fuseLowerBound({ shortCircuitCurrent: "12.28 A" }), "18.42"],
  ["fuse, upper", () => string.fuseUpperBound({ shortCircuitCurrent: "12.28 A" }), "29.472"],
  ["fuse, lower of maximum", () => string.fuseLowerBoundOfMaximum({ maximumCurrent: "17.5 A" }), "19.25"],
  ["fuse in heat", () => string.fuseRatingForHeat({ shortCircuitCurrent: "10 A" }), "14"],
  ["reference ambient", () => string.fuseReferenceAmbient({}), "45"],
  ["hot fuse", () => string.hotFuseRating({ ratedCurrent: "20 A", ambientFactor: "0.9" }), "18"],
  [
    "module rating left",
    () => string.moduleRatingLeft({ maximumSeriesFuse: "25 A", strings: 3, currentOfOne: "4 A" }),
    "17",
  ],
  [
    "module rating needed",
    () => string.moduleRatingNeeded({ ratedCurrent: "3.81 A", strings: 3, currentOfOne: "1.5 A" }),
    "6.81",
  ],
  ["group, lower", () => string.groupFuseLowerBound({ shortCircuitCurrent: "80 A" }), "100"],
  ["poles", () => string.polesOfCircuits({ circuits: 3 }), "6"],
  ["engineering capacity", () => string.engineeringCapacity({}), "100"],
  [
    "engineered, above the floor",
    () => string.engineeredCurrent({ averageCurrent: "150 A", maximumCurrent: "200 A" }),
    "150",
  ],
  [
    "engineered, on the floor",
    () => string.engineeredCurrent({ averageCurrent: "120 A", maximumCurrent: "200 A" }),
    "140",
  ],
  ["arc-fault voltage", () => string.arcFaultVoltage({}), "80"],
  ["reference altitude", () => string.referenceAltitude({}), "2000"],
  ["derated", () => string.deratedCurrent({ ratedCurrent: "63 A", derating: "0.8" }), "50.4"],
  ["diodes", () => string.diodeLoss({ diodeVoltage: "0.8 V", mppVoltage: "640 V" }), "0.00125"],
  ["regulated power", () => string.regulatedStringPower({ inverterVoltage: "380 V", outputCurrent: "15 A" }), "5700"],
  ["string power", () => string.stringPower({ modules: 14, modulePower: "440 W" }), "6160"],
  ["ratio", () => string.dcAcRatio({ arrayPower: "18 kW", ratedPower: "15 kW" }), "1.2"],
  [
    "power at an irradiance",
    () => string.arrayPowerAt({ arrayPower: "18 kW", irradiance: "900 W/m²", performance: "0.9" }),
    "14580",
  ],
  ["energy", () => string.energyOver({ power: "14580 W", duration: "200 h" }), "2916000"],
  ["energy above", () => string.energyAbove({ power: "16 kW", powerLimit: "15 kW", duration: "100 h" }), "100000"],
  ["energy not above", () => string.energyAbove({ power: "14 kW", powerLimit: "15 kW", duration: "100 h" }), "0"],
  [
    "clipping",
    () => string.clippingShare({ cutEnergies: ["0 kWh", "100 kWh"], availableEnergies: ["8000 kWh", "2000 kWh"] }),
    "0.01",
  ],
  [
    "clipping of sums",
    () => string.clippingShareOfSums({ cutEnergy: "100 kWh", availableEnergy: "8000 kWh" }),
    "0.0125",
  ],
  ["residual, small", () => string.residualCurrentLimit({ apparentPower: "15 kVA" }), "300"],
  ["residual, at the limit", () => string.residualCurrentLimit({ apparentPower: "30 kVA" }), "300"],
  ["residual, large", () => string.residualCurrentLimit({ apparentPower: "60 kVA" }), "600"],
  ["insulation", () => string.insulationBeforeConnection({ maximumVoltage: "990 V" }), "33000"],
  [
    "served, by the corrected ampacity",
    () => string.shortCircuitCurrentServed({ correctedAmpacity: "14.35 A", terminalAmpacity: "20 A" }),
    "11.48",
  ],
  [
    "served, by the terminals",
    () => string.shortCircuitCurrentServed({ correctedAmpacity: "40 A", terminalAmpacity: "20 A" }),
    "12.8",
  ],
  ["ground-fault voltage", () => string.groundFaultVoltage({}), "30"],
  ["ground-fault current", () => string.groundFaultCurrent({}), "8"],
];

it.each(rows)("%s", (_, call, due) => {
  expect(call().text).toBe(due);
});

it("refuses a share of no energy", () => {
  expect(() => string.clippingShare({ cutEnergies: ["0 Wh"], availableEnergies: ["0 Wh"] })).toThrow(
    "a share needs some energy",
  );
});
