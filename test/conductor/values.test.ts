import { describe, expect, it } from "vitest";
import * as conductor from "../../src/conductor/index.js";
import type { Quantity } from "../../src/quantity/index.js";

type Inputs = Readonly<Record<string, string | number | readonly (string | number)[]>>;
const rules = conductor as unknown as Readonly<Record<string, (inputs: Inputs) => Quantity>>;

/** Worked by hand, or by a few lines in another language: each form at points that tell its terms apart. */
const values: readonly (readonly [string, Inputs, string])[] = [
  ["skinEffectFactor", { argumentSquared: 1 }, "0.005186721992"],
  ["skinEffectFactor", { argumentSquared: 7.84 }, "0.2548615829"],
  ["skinEffectFactor", { argumentSquared: 7.85 }, "0.2563634029"],
  ["skinEffectFactor", { argumentSquared: 10 }, "0.3710276854"],
  ["skinEffectFactor", { argumentSquared: 14.44 }, "0.609712"],
  ["skinEffectFactor", { argumentSquared: 14.45 }, "0.6126657089"],
  ["skinEffectFactor", { argumentSquared: 20 }, "0.8501361281"],
  ["proximityEffectOfThree", { argumentSquared: 1, diameterOverSpacing: 0.5 }, "0.005661303926"],
  ["proximityEffectOfThree", { argumentSquared: 4, diameterOverSpacing: 0.9 }, "0.2304897445"],
  ["proximityEffectOfThree", { argumentSquared: 7.84, diameterOverSpacing: 0.7 }, "0.2998535669"],
  ["proximityEffectOfTwo", { argumentSquared: 1, diameterOverSpacing: 0.5 }, "0.003760373444"],
  ["proximityEffectOfTwo", { argumentSquared: 4, diameterOverSpacing: 0.9 }, "0.183515625"],
  ["proximityEffectOfTwo", { argumentSquared: 7.84, diameterOverSpacing: 0.7 }, "0.3621583093"],
  ["skinEffectArgument", { frequency: 50, resistancePerLength: "0.1 Ω/km", skinConstant: 1 }, "1.256637061"],
  ["skinEffectArgument", { frequency: 60, resistancePerLength: "0.05 Ω/km", skinConstant: 0.8 }, "2.412743158"],
  ["reactanceBySpacing", { frequency: 50, spacing: 20, conductorDiameter: 10 }, "0.0001028114069"],
  ["reactanceBySpacing", { frequency: 60, spacing: 30, conductorDiameter: 8 }, "0.0001707696646"],
  ["reactanceBySpacing", { frequency: 50, spacing: 5, conductorDiameter: "9.9 mm" }, "0.00001633944449"],
  ["asnzs3008_2017_singlePhase", { tabulatedDrop: 15.6 }, "18.0133284"],
  [
    "bs7671_2018_temperatureCorrection",
    { conductorLimit: 70, temperatureFactor: 1, groupingFactor: 1, current: 20, tabulatedAmpacity: 40 },
    "0.9",
  ],
  [
    "bs7671_2018_temperatureCorrection",
    { conductorLimit: 90, temperatureFactor: 0.9, groupingFactor: 0.8, current: 30, tabulatedAmpacity: 50 },
    "0.9703",
  ],
  [
    "bs7671_2018_temperatureCorrection",
    { conductorLimit: 70, temperatureFactor: 0.94, groupingFactor: 0.7, current: 0, tabulatedAmpacity: 25 },
    "0.9422714667",
  ],
  [
    "iec60364_5_52_2009_annexG",
    {
      conductorFactor: 2,
      serviceResistivity: 0.0225,
      length: 80,
      section: 25,
      powerFactor: 0.8,
      reactancePerLength: "0.08 Ω/km",
      reactiveFactor: 0.6,
      current: 32,
    },
    "3.93216",
  ],
  [
    "iec60364_5_52_2009_annexG",
    {
      conductorFactor: 1,
      serviceResistivity: 0.036,
      length: 50,
      section: 35,
      powerFactor: 0.9,
      reactancePerLength: "0.08 Ω/km",
      reactiveFactor: -0.4359,
      current: 100,
    },
    "4.454211429",
  ],
  [
    "longestTwoConductorRun",
    {
      voltageChange: 2.3,
      current: 16,
      resistancePerLength: "5.52 Ω/km",
      reactancePerLength: "0.8 Ω/km",
      powerFactor: 0.8,
      reactiveFactor: 0.6,
    },
    "14.68035131",
  ],
  [
    "longestThreePhaseRun",
    {
      voltageChange: 8,
      current: 32,
      resistancePerLength: "2.19 Ω/km",
      reactancePerLength: "0.4 Ω/km",
      powerFactor: 0.9,
      reactiveFactor: -0.4359,
    },
    "80.33750072",
  ],
  [
    "sectionByConductivity",
    { length: 20, activePower: 4600, conductivity: 48, voltageChange: 3.45, nominalVoltage: 230 },
    "4.830917874",
  ],
  [
    "conductivityAtTemperature",
    { conductivityAt20: 58, temperatureCoefficientAt20: 0.00393, conductorTemperature: 70 },
    "48.47471793",
  ],
  [
    "conductivityAtTemperature",
    { conductivityAt20: 35.38, temperatureCoefficientAt20: 0.00403, conductorTemperature: 90 },
    "27.59535138",
  ],
  [
    "resistivityAtTemperature",
    { conductivityAt20: 58, temperatureCoefficientAt20: 0.00393, conductorTemperature: 70 },
    "0.02062931034",
  ],
  ["dropByK", { conductorFactor: 2, milFootResistance: 0.02144, current: 24, length: 50, area: 5 }, "10.2912"],
  ["dropByK", { conductorFactor: 1.5, milFootResistance: 0.03524, current: 100, length: 30, area: 50 }, "3.1716"],
  [
    "resistanceAt20",
    { resistancePerLength: "5.515865 Ω/km", temperatureCoefficientAt20: 0.00393, conductorTemperature: 70 },
    "0.00461",
  ],
  ["lossGrowth", { loadGrowth: 0.02, priceGrowth: 0.03, discountRate: 0.05 }, "1.020582857"],
  ["presentWorth", { lossGrowth: 0.95, yearsOfLife: 20 }, "12.83028155"],
  [
    "capacityByAnnexD",
    { section: 400, firstCoefficient: 16, firstExponent: 0.6633, secondCoefficient: "0.0006 A", secondExponent: 1.793 },
    "823.4937226",
  ],
  [
    "effectiveImpedancePerLength",
    { resistancePerLength: "6.6 Ω/km", reactancePerLength: "0.5 Ω/km", powerFactor: 0.85, reactiveFactor: 0.5 },
    "0.00586",
  ],
  ["lightLoad", { ampacity: 40.5 }, "12.15"],
  ["rooftopAmbient", { ambient: 38, rise: 17 }, "55"],
  ["lossShare", { loss: 25, power: 5000 }, "0.005"],
  ["energyLost", { loss: 0.05, duration: 1000 }, "50"],
  ["energyCost", { energy: 50, energyPrice: 0.1 }, "5"],
  ["terminalColumnAmpacity", { tabulatedAmpacity: 35, conductorsInParallel: 2 }, "70"],
  ["ampacityOfParallel", { ampacity: 167, conductorsInParallel: 3 }, "501"],
  ["unmarkedTerminalColumn", { circuitCurrent: 99.9 }, "60"],
  ["unmarkedTerminalColumn", { circuitCurrent: 100 }, "60"],
  ["unmarkedTerminalColumn", { circuitCurrent: 100.1 }, "75"],
  [
    "sectionForDrop",
    {
      conductorFactor: 1,
      serviceResistivity: 0.0225,
      length: 100,
      powerFactor: 0.8,
      current: 50,
      nominalVoltage: 230,
      dropLimit: 0.05,
    },
    "7.826086957",
  ],
  ["circularMils", { conductorDiameter: 0.25 }, "62500"],
  ["measuringFactor", { conductorTemperature: 20 }, "1"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: 0.15 }, "100"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: 0.16 }, "86"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: 0.33 }, "86"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: "33.5 %" }, "85.57213930"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: 0.43 }, "66.66666667"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: 0.45 }, "63.70370370"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: "45.5 %" }, "73.26007326"],
  ["ampacityWithHarmonics", { ampacity: 100, thirdHarmonicShare: "44.5 %" }, "64.41947566"],
  ["supplementOfAnnexG", { length: 1000 }, "0.5"],
  ["hottestStretch", { temperatures: [52, 61, 40] }, "61"],
  ["nfpa70_2017_rooftopAmbient", { ambient: 37, heightAboveRoof: 10 }, "70"],
  ["nfpa70_2023_rooftopAmbient", { ambient: 37, heightAboveRoof: 10 }, "70"],
];

describe("values of forms", () => {
  it.each(values)("%s of %o is %s", (name, inputs, expected) => {
    const { text } = rules[name]!(inputs);
    expect(Number(text).toPrecision(10)).toBe(Number(expected).toPrecision(10));
  });
});

describe("what a form must not be used for", () => {
  it.each([
    ["presentWorth", { lossGrowth: 1, yearsOfLife: 20 }],
    ["reactanceBySpacing", { frequency: 50, spacing: 5, conductorDiameter: "10 mm" }],
    [
      "longestTwoConductorRun",
      {
        voltageChange: 2,
        current: 0,
        resistancePerLength: "5 Ω/km",
        reactancePerLength: 0,
        powerFactor: 1,
        reactiveFactor: 0,
      },
    ],
    [
      "longestThreePhaseRun",
      {
        voltageChange: 2,
        current: 10,
        resistancePerLength: "1 Ω/km",
        reactancePerLength: "1 Ω/km",
        powerFactor: 0.6,
        reactiveFactor: -0.8,
      },
    ],
    ["longestDirectRun", { voltageChange: 2, current: 0, resistancePerLength: "5 Ω/km" }],
    [
      "capacityByAnnexD",
      { section: 400, firstCoefficient: "1 A", firstExponent: 0.5, secondCoefficient: "1 A", secondExponent: 1 },
    ],
    [
      "capacityByAnnexD",
      { section: "1 mm²", firstCoefficient: "1 A", firstExponent: 0.5, secondCoefficient: "1 A", secondExponent: 1 },
    ],
    ["conductorLimitFactor", { ambient: 90, conductorLimit: 90 }],
    ["ambientFactorByEquation", { conductorLimit: 90, ambient: 90, tableAmbient: 30 }],
    ["conductorTemperatureAtLoad", { ambient: 70, conductorLimit: 70, current: 1, ampacity: 10 }],
  ] as const)("%s of %o", (name, inputs) => {
    let code = "computed";
    try {
      rules[name]!(inputs);
    } catch (error) {
      code = (error as { readonly problems: readonly { readonly code: string }[] }).problems[0]!.code;
    }
    expect(["requirement", "out-of-domain"]).toContain(code);
  });
});
