import { type Check, type Known, whenKnown } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import {
  arrayInsulationMinimum,
  arrayInsulationMinimumBelow120,
  arrayTestVoltage,
  arrayTestVoltageAbove1000,
  insulationSystemVoltage,
  kilovoltStep,
  largestSection,
  middleTestStep,
  sectionPower,
} from "./array-test.js";
import { belowMiddleStep, sectionSmallEnough, testVoltageBearable, withinKilovoltTest } from "./conditions.js";

/** An array whose insulation is tested. */
export interface ArrayUnderTest {
  readonly at?: string;
  /** Open-circuit voltage of its longest string at standard test conditions. */
  readonly stringVoltage: Known<Input<"voltage">>;
  /** At standard test conditions. */
  readonly arrayPower: Known<Input<"activePower">>;
  /** Lowest rated voltage among the parts that stay connected: modules, plugs, cables. */
  readonly lowestRating: Known<Input<"voltage">>;
}

/** How the insulation of an array is tested, and what it must reach. */
export interface ArrayInsulation {
  readonly systemVoltage: Known<Quantity<"voltage">>;
  readonly testVoltage: Known<Quantity<"voltage">>;
  readonly minimum: Known<Quantity<"resistance">>;
  /** Sections to be tested apart, so that none exceeds the power of one section; each must reach the minimum. */
  readonly sections: Known<number>;
  readonly checks: readonly Check[];
}

/** The two ways of testing the insulation of an array. */
export const insulationMethods = [
  {
    key: "one pole after the other",
    label: "negative pole to earth, then positive pole to earth",
    edition: "IEC 62446-1:2016",
    grade: "reproduced",
  },
  {
    key: "both poles joined",
    label: "both poles joined, to earth; only with a switch that is rated for joining them under voltage",
    edition: "IEC 62446-1:2016",
    grade: "reproduced",
  },
] as const;

/** What every insulation test of an array asks for. */
export const insulationNotes: readonly string[] = [
  "Disconnect the inverter and every surge protective device first; they would be damaged or falsify the reading.",
  "The array is live during the test: keep people off modules and frames, wear gloves rated for the voltage, and do not test in the wet.",
  "Insulation resistance falls with warmth and moisture: note module temperature and weather beside the reading, and repeat a low reading dry.",
  "Wait until the instrument has discharged the array before anything is touched.",
];

/**
 * Test voltage, least resistance and sections of the insulation test of an array.
 *
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { arrayInsulation } from "pv-to-grid/commissioning";
 * const test = arrayInsulation({ stringVoltage: "548.8 V", arrayPower: "24 kW", lowestRating: "1000 V" });
 * test.testVoltage; // 1000 V
 * test.sections; // 3
 * ```
 */
export function arrayInsulation({ at = "", stringVoltage, arrayPower, lowestRating }: ArrayUnderTest): ArrayInsulation {
  const systemVoltage = whenKnown({ stcStringVoltage: stringVoltage }, insulationSystemVoltage);
  const testVoltage = whenKnown({ systemVoltage }, testVoltageOf);
  return Object.freeze({
    systemVoltage,
    testVoltage,
    minimum: whenKnown({ systemVoltage }, minimumOf),
    sections: whenKnown({ arrayPower }, (known) => sectionsOf(given(known.arrayPower, "W").in("kW"))),
    checks: Object.freeze([testVoltageBearable({ value: testVoltage, limit: lowestRating, at })]),
  });
}

interface OfSystem {
  readonly systemVoltage: Quantity<"voltage">;
}

function testVoltageOf({ systemVoltage }: OfSystem): Quantity<"voltage"> {
  const within = withinKilovoltTest({ value: systemVoltage, limit: kilovoltStep({}) }).verdict === "met";
  return within ? arrayTestVoltage({ systemVoltage }) : arrayTestVoltageAbove1000({ systemVoltage });
}

function minimumOf({ systemVoltage }: OfSystem): Quantity<"resistance"> {
  const below = belowMiddleStep({ value: systemVoltage, limit: middleTestStep({}) }).verdict === "met";
  return below ? arrayInsulationMinimumBelow120({ systemVoltage }) : arrayInsulationMinimum({ systemVoltage });
}

/** The fewest equal sections of which none is too large. */
function sectionsOf(arrayPower: Quantity<"activePower">): number {
  const fits = (sections: number): boolean =>
    sectionSmallEnough({ value: sectionPower({ arrayPower, sections }), limit: largestSection({}) }).verdict === "met";
  // A double is near enough to begin the search; the condition ends it.
  let sections = Math.max(1, Math.floor(arrayPower.number / largestSection({}).number) - 1);
  while (!fits(sections)) sections += 1;
  return sections;
}
