import {
  type EvaluatedReading,
  evaluateReading,
  type ExpectedReadings,
  hintsFor,
  identicalStrings,
  type ReadingKey,
  type ReadString,
} from "../../commissioning/index.js";
import { type Check, isMissing, type Known } from "../../formula/index.js";
import type { Module } from "../../module/index.js";
import type { Quantity } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";
import { readingsInLight, STRING_READINGS } from "./expected-readings.js";
import type { MeasuredConditions, SheetIndex } from "./measured-conditions.js";
import { insulationOfString } from "./string-limits.js";
import type { StringPlace } from "./string-places.js";

/** A reading that was judged, beside what was expected of it. */
export interface JudgedValue {
  readonly evaluated: EvaluatedReading;
  readonly expected: Known<Quantity> | null;
}

/** A string of the record with its module type and the conditions of the day. */
export interface StringOfDay extends StringPlace {
  readonly module: Module;
  readonly moduleType: string;
  readonly conditions: MeasuredConditions;
}

/** Every reading of one string, judged. */
export interface JudgedString {
  readonly place: StringOfDay;
  readonly expected: ExpectedReadings;
  readonly values: readonly JudgedValue[];
  /** Checks of the test itself, such as whether the parts bear the test voltage. */
  readonly checks: readonly Check[];
}

/** Judges the readings of one string. */
export function judgeString(plant: Plant, place: StringOfDay, sheet: SheetIndex): JudgedString {
  const { at, module, moduleType, string, conditions } = place;
  const expected = readingsInLight({
    moduleType: plant.moduleTypes[moduleType]!,
    module,
    modules: string.modules,
    ...conditions,
  });
  const operating = STRING_READINGS.map((reading): JudgedValue => {
    const { low, high, expected: due } = expected[reading];
    return { evaluated: evaluateReading({ reading, at, value: sheet.read(at, reading), low, high }), expected: due };
  });
  const insulation = insulationOfString(plant, at, module, moduleType, string.modules);
  const tested = testedPoles(at, sheet).map((reading): JudgedValue => ({
    evaluated: evaluateReading({ reading, at, value: sheet.read(at, reading), low: insulation.minimum }),
    expected: null,
  }));
  return { place, expected, values: [...operating, ...tested], checks: insulation.checks };
}

/** The poles that were tested: both joined, or one after the other. */
function testedPoles(at: string, sheet: SheetIndex): readonly ReadingKey[] {
  const isRead = (reading: ReadingKey): boolean => !isMissing(sheet.read(at, reading));
  const apart = ["insulationPositive", "insulationNegative"] as const;
  if (!isRead("insulationJoined")) return apart;
  return [...apart.filter(isRead), "insulationJoined"];
}

/** What the readings of all strings suggest. */
export function hintsOf(strings: readonly JudgedString[], sheet: SheetIndex) {
  return hintsFor(
    strings.map(({ place: { at, string }, expected }): ReadString => ({
      at,
      modules: string.modules,
      expected,
      openCircuitVoltage: sheet.read(at, "openCircuitVoltage"),
      shortCircuitCurrent: sheet.read(at, "shortCircuitCurrent"),
      operatingVoltage: sheet.read(at, "operatingVoltage"),
      operatingCurrent: sheet.read(at, "operatingCurrent"),
    })),
  );
}

/** Identical strings of one roof, compared with each other in every reading that was taken on at least one of them. */
export function compareStrings(strings: readonly JudgedString[], sheet: SheetIndex) {
  const alike = new Map<string, JudgedString[]>();
  for (const string of strings) {
    const { roof, modules } = string.place.string;
    const key = `${roof}\n${modules}`;
    alike.set(key, [...(alike.get(key) ?? []), string]);
  }
  return [...alike.values()]
    .filter((group) => group.length > 1)
    .flatMap((group) => {
      const at = group.map(({ place }) => place.at);
      return (["openCircuitVoltage", "shortCircuitCurrent", "operatingCurrent"] as const)
        .map((reading) => ({
          reading,
          readings: at.map((place) => ({ at: place, value: sheet.read(place, reading) })),
        }))
        .filter(({ readings }) => readings.some(({ value }) => !isMissing(value)))
        .map(({ reading, readings }) => ({
          reading,
          at,
          agreement: identicalStrings({ at: at.join(" and "), reading, strings: readings }),
        }));
    });
}
