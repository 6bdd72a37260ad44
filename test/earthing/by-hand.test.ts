import { expect, it } from "vitest";
import * as earthing from "../../src/earthing/index.js";
import type { Quantity } from "../../src/quantity/index.js";

// Each value was computed apart from the library, in 30 digits, from the formula as its source has it.
const soil = { soilResistivity: "100 Ω·m" } as const;
const rod = { rodLength: "3 m", rodDiameter: "16 mm" } as const;
const steel = {
  heatCapacity: "3.28 J/(K·cm³)",
  resistivityCoefficient: "0.0016 1/K",
  resistivity: "15.9 μΩ·cm",
  inverseCoefficient: "605 K",
  highestTemperature: "1510 °C",
  groundAmbient: "40 °C",
} as const;
const rows: readonly (readonly [string, () => Quantity, string])[] = [
  [
    "prefactor of aluminium",
    () =>
      earthing.adiabaticPrefactor({
        heatCapacity: "0.0025",
        reciprocalCoefficient: "228 K",
        resistivity: "28.264e-6 Ω·mm",
      }),
    "148.10817567273",
  ],
  [
    "factor of steel, 60 to 200 °C",
    () =>
      earthing.adiabaticFactorOf({
        heatCapacity: "0.0038",
        reciprocalCoefficient: "202 K",
        resistivity: "138e-6 Ω·mm",
        initialTemperature: "60 °C",
        finalTemperature: "200 °C",
      }),
    "51.157015937306",
  ],
  ["rod", () => earthing.verticalRodResistance({ ...soil, ...rod }), "33.492674381132"],
  [
    "pipe",
    () => earthing.pipeElectrodeResistance({ soilResistivity: "65 Ω·m", rodLength: "3 m", rodDiameter: "40 mm" }),
    "19.668678795187",
  ],
  ["soil from a rod", () => earthing.soilResistivityFromRod({ rodResistance: "20 Ω", ...rod }), "59.714550628024"],
  [
    "ten rods in line",
    () => earthing.rodsInLineResistance({ ...soil, ...rod, rodCount: 10, rodSpacing: "5 m" }),
    "4.5276521568255",
  ],
  [
    "three rods by the factor",
    () =>
      earthing.rodGroupResistance({
        rodResistance: "33 Ω",
        ...soil,
        rodSpacing: "3 m",
        rodCount: 3,
        groupFactor: "1.66",
      }),
    "13.935524505917",
  ],
  [
    "two rods far apart",
    () => earthing.twoRodsFarResistance({ ...soil, ...rod, rodSpacing: "6 m" }),
    "17.995261396773",
  ],
  ["two rods near", () => earthing.twoRodsNearResistance({ ...soil, ...rod, rodSpacing: "1.5 m" }), "20.231667607531"],
  [
    "wire",
    () =>
      earthing.buriedWireResistance({
        ...soil,
        conductorLength: "20 m",
        conductorDiameter: "10 mm",
        burialDepth: "0.6 m",
      }),
    "8.397695282776",
  ],
  [
    "strip",
    () =>
      earthing.buriedStripResistance({
        ...soil,
        conductorLength: "20 m",
        stripWidth: "30 mm",
        stripThickness: "3 mm",
        burialDepth: "0.6 m",
      }),
    "7.9931598583641",
  ],
  [
    "ring",
    () =>
      earthing.buriedRingResistance({
        ...soil,
        ringDiameter: "10 m",
        conductorDiameter: "10 mm",
        burialDepth: "0.6 m",
      }),
    "6.3294100808149",
  ],
  [
    "flat plate",
    () => earthing.horizontalPlateResistance({ ...soil, plateRadius: "0.5 m", burialDepth: "1.5 m" }),
    "27.611289291026",
  ],
  [
    "upright plate",
    () => earthing.verticalPlateResistance({ ...soil, plateRadius: "0.5 m", burialDepth: "1.5 m" }),
    "27.674706426313",
  ],
  [
    "flat plate, shallow",
    () => earthing.horizontalPlateResistance({ ...soil, plateRadius: "0.5 m", burialDepth: "0.3 m" }),
    "38.166970721168",
  ],
  [
    "upright plate, shallow",
    () => earthing.verticalPlateResistance({ ...soil, plateRadius: "0.5 m", burialDepth: "0.3 m" }),
    "42.928052927799",
  ],
  ["disc of a plate", () => earthing.plateRadiusOfArea({ plateArea: "2 m²" }), "0.79788456080287"],
  [
    "plate by the British code",
    () => earthing.plateResistance({ ...soil, plateRadius: "0.5 m", burialDepth: "1.5 m" }),
    "27.941176470588",
  ],
  ["rod, first estimate", () => earthing.rodEstimate({ soilResistivity: "50 Ω·m", rodLength: "2 m" }), "25"],
  [
    "conductor, first estimate",
    () => earthing.buriedConductorEstimate({ soilResistivity: "50 Ω·m", conductorLength: "20 m" }),
    "5",
  ],
  ["plate, first estimate", () => earthing.plateEstimate({ soilResistivity: "50 Ω·m", platePerimeter: "4 m" }), "10"],
  [
    "steel conductor of a grid",
    () => earthing.groundConductorSection({ faultCurrent: "20 kA", disconnectionTime: "0.5 s", ...steel }),
    "114.2901730102",
  ],
  ["its factor", () => earthing.fusingFactorOf(steel), "0.0080815356358494"],
  [
    "decrement factor",
    () => earthing.decrementFactor({ reactanceToResistance: 20, supplyFrequency: "60 Hz", faultDuration: "0.1 s" }),
    "1.2321874416464",
  ],
  ["depth of a grid", () => earthing.gridDepthFactor({ burialDepth: "0.7 m" }), "1.3038404810405"],
  [
    "mesh of a grid",
    () =>
      earthing.meshFactor({
        meshSpacing: "5 m",
        burialDepth: "0.7 m",
        conductorDiameter: "12 mm",
        parallelConductors: 4,
        irregularityWeight: "0.8",
        depthFactor: "1.3",
      }),
    "0.78397707185389",
  ],
  ["irregularity of 2000", () => earthing.gridIrregularityOf2000({ parallelConductors: 10 }), "2.124"],
  [
    "grid and rods",
    () => earthing.gridAndRodsResistance({ gridResistance: "5 Ω", rodBedResistance: "3 Ω", mutualResistance: "1 Ω" }),
    "2.3333333333333",
  ],
  [
    "current density",
    () => earthing.electrodeCurrentDensity({ soilResistivity: "50 Ω·m", faultDuration: "2 s" }),
    "757",
  ],
  ["surface of a rod", () => earthing.rodSurface({ rodLength: "2.5 m", rodDiameter: "20 mm" }), "0.15707963267949"],
  [
    "four-probe test",
    () => earthing.wennerResistivity({ probeSpacing: "2 m", wennerResistance: "10 Ω" }),
    "125.66370614359",
  ],
  [
    "withstand of copper by NEC",
    () =>
      earthing.nfpaCopperWithstandCurrent({
        conductorArea: "10380 cmil",
        disconnectionTime: "0.1 s",
        initialTemperature: "75 °C",
        finalTemperature: "150 °C",
      }),
    "1737.7963142211",
  ],
  [
    "withstand of aluminium by NEC",
    () =>
      earthing.nfpaAluminiumWithstandCurrent({
        conductorArea: "16510 cmil",
        disconnectionTime: "0.5 s",
        initialTemperature: "90 °C",
        finalTemperature: "250 °C",
      }),
    "1098.2587285477",
  ],
  [
    "another metal",
    () =>
      earthing.protectiveConductorOfOtherMaterial({
        sameMaterialSection: "16 mm²",
        lineFactor: "115",
        protectiveFactor: "46",
      }),
    "40",
  ],
  ["jumper above the table", () => earthing.bondingJumperArea({ conductorArea: "2000 kcmil" }).in("kcmil"), "250"],
];

const DIGITS = 12;

it.each(rows)("%s", (_, compute, expected) => {
  expect(compute().number.toPrecision(DIGITS)).toBe(Number(expected).toPrecision(DIGITS));
});
