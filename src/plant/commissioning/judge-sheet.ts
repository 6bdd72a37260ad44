import {
  evaluateReading,
  finalYield,
  type Hint,
  longestStringThatTells,
  type MeasurementSheet,
  performanceRatio,
  type ReadingVerdict,
  readingKind,
  referenceYield,
} from "../../commissioning/index.js";
import { type Check, whenKnown } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { standingCautions } from "../cautions.js";
import type { Plant } from "../description/plant-description.js";
import { plantOf } from "../description/read-plant.js";
import type { PlantRecord } from "../record/record.js";
import { makeRecorder, type Recorder } from "../record/recorder.js";
import { designArrays } from "../sizing/arrays.js";
import { powerOfArray, powerOfStrings } from "../sizing/array-formulas.js";
import { beginSizing } from "../sizing/sizing.js";
import { VERSION } from "../version.js";
import { circuitLimits } from "./circuit-limits.js";
import { compareStrings, hintsOf, judgeString, type JudgedValue } from "./judge-strings.js";
import {
  JUDGED_FORMAT,
  type JudgedHint,
  type JudgedReading,
  type JudgedSheet,
  type TellingLengths,
} from "./judged-sheet.js";
import { conditionsOf, indexSheet, type SheetIndex } from "./measured-conditions.js";
import { type StringPlace, stringPlaces } from "./string-places.js";

/**
 * Judges a filled-in measurement sheet against a sizing record: each reading within, outside, missing or open, with its
 * working; identical strings against each other; and hints where to look, which are never verdicts.
 *
 * @param record - the sizing record of the plant
 * @param sheet - the sheet, as `readSheetJson` or `readSheetCsv` of `pv-to-grid/commissioning` gives it
 * @returns frozen plain JSON
 * @example
 * ```ts
 * import { readSheetCsv, sheetOf } from "pv-to-grid/commissioning";
 * import { judgeSheet, sizePlant } from "pv-to-grid/plant";
 * // const judged = judgeSheet(sizePlant(plant), sheetOf(readSheetCsv(text)));
 * // judged.outcome; // { within: 14, outside: 1, missing: 6, open: 0 }
 * ```
 */
export function judgeSheet(record: PlantRecord, sheet: MeasurementSheet): JudgedSheet {
  const plant = plantOf(record.plant);
  const arrays = designArrays(beginSizing(plant, record.rules));
  const index = indexSheet(sheet);
  const recorder = makeRecorder();
  const strings = stringPlaces(record).map((place) => {
    const { roof, module } = arrays.get(place.string.roof)!;
    const conditions = conditionsOf(plant, roof.name, index);
    return judgeString(plant, { ...place, module, moduleType: roof.moduleType, conditions }, index);
  });
  const circuits = circuitLimits(plant, record).map(({ expected = null, ...place }): JudgedValue => ({
    evaluated: evaluateReading({ ...place, value: index.read(place.at, place.reading) }),
    expected,
  }));
  const judged = [...strings.flatMap(({ values }) => values), ...circuits];
  const comparisons = compareStrings(strings, index);
  const checks = [
    ...strings.flatMap((string) => string.checks),
    ...judged.flatMap(({ evaluated }) => evaluated.checks),
    ...comparisons.flatMap(({ agreement }) => agreement.checks),
  ];
  const readings = judged.map((value) => recordedReading(value, index, recorder));
  const result: JudgedSheet = {
    format: JUDGED_FORMAT,
    library: VERSION,
    plant: record.plant.name,
    date: sheet.date,
    by: sheet.by,
    outcome: outcomeOf(readings),
    readings,
    comparisons: comparisons.map(({ reading, at, agreement }) => ({
      reading,
      at,
      spread: recorder.perhaps(agreement.spread),
      deviations: agreement.deviations.map(({ deviation }) => recorder.perhaps(deviation)),
      checks: agreement.checks.map(({ id }) => id),
    })),
    hints: hintsOf(strings, index).map((hint) => recordedHint(hint, recorder)),
    tells: tellingLengths(strings.map(({ place }) => place)),
    performance: performanceOf(plant, record, index, recorder),
    unplaced: unplacedOf(sheet, plant, readings),
    notes: [...new Set(strings.flatMap(({ expected }) => expected.notes))],
    cautions: standingCautions,
    checks: unique(checks).map(recorder.check),
    sources: [],
    declarations: {},
    steps: {},
  };
  return deepFreeze({
    ...result,
    sources: recorder.sources(),
    declarations: recorder.declarations(),
    steps: recorder.steps(),
  });
}

function recordedReading({ evaluated, expected }: JudgedValue, sheet: SheetIndex, recorder: Recorder): JudgedReading {
  const { at, reading, verdict, value, low, high, checks, missing } = evaluated;
  return {
    at,
    reading,
    what: readingKind(reading)!.label,
    verdict,
    value: recorder.perhaps(value),
    expected: recorder.perhaps(expected),
    low: recorder.perhaps(low),
    high: recorder.perhaps(high),
    checks: checks.map(({ id }) => id),
    missing,
    note: sheet.note(at, reading),
  };
}

function recordedHint({ key, at, text, modulesRead }: Hint, recorder: Recorder): JudgedHint {
  return { key, at, text, modulesRead: recorder.perhaps(modulesRead) };
}

function outcomeOf(readings: readonly JudgedReading[]): JudgedSheet["outcome"] {
  const count = (verdict: ReadingVerdict): number => readings.filter((reading) => reading.verdict === verdict).length;
  return { within: count("within"), outside: count("outside"), missing: count("missing"), open: count("open") };
}

/** Up to which length a missing module is noticed, and which strings are longer than that. */
export function tellingLengths(strings: readonly StringPlace[]): TellingLengths {
  const againstExpected = longestStringThatTells({ against: "expected value" }).modules;
  return {
    againstExpected,
    amongIdentical: longestStringThatTells({ against: "identical strings" }).modules,
    tooLong: strings
      .filter(({ string }) => againstExpected !== null && string.modules > againstExpected)
      .map(({ at }) => at),
  };
}

function performanceOf(
  { moduleTypes, roofs }: Plant,
  { strings }: PlantRecord,
  sheet: SheetIndex,
  recorder: Recorder,
): JudgedSheet["performance"] {
  const arrayPower = powerOfArray({
    stringPowers: strings.map(({ roof, modules, count }) => {
      const { maximumPower } = moduleTypes[roofs.find(({ name }) => name === roof)!.moduleType]!;
      return powerOfStrings({ modules, strings: count, maximumPower });
    }),
  }).in("kW");
  const yields = whenKnown(
    {
      energy: sheet.read<Quantity<"energy">>("", "energy"),
      irradiation: sheet.read<Quantity<"irradiation">>("", "irradiation"),
    },
    ({ energy, irradiation }) =>
      irradiation.number > 0
        ? { finalYield: finalYield({ energy, arrayPower }), referenceYield: referenceYield({ irradiation }) }
        : null,
  );
  if (yields === null || "missing" in yields) return null;
  return {
    finalYield: recorder.number(yields.finalYield),
    referenceYield: recorder.number(yields.referenceYield),
    performanceRatio: recorder.number(performanceRatio(yields)),
  };
}

/** Readings that stand at a place that the plant does not have; a slip in a name must not pass as a reading not taken. */
function unplacedOf(
  { readings }: MeasurementSheet,
  { roofs }: Plant,
  judged: readonly JudgedReading[],
): JudgedSheet["unplaced"] {
  const known = new Set(judged.map(({ at, reading }) => `${at}\n${reading}`));
  const isKnown = (at: string, reading: string, of: string): boolean =>
    known.has(`${at}\n${reading}`) ||
    (of === "roof" && roofs.some(({ name }) => name === at)) ||
    (of === "plant" && at === "");
  return readings
    .filter(({ at, reading, value }) => value !== null && !isKnown(at, reading, readingKind(reading)!.of))
    .map(({ at, reading }) => ({ at, reading }));
}

function unique(checks: readonly Check[]): readonly Check[] {
  return [...new Map(checks.map((check) => [check.id, check])).values()];
}

function deepFreeze<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  for (const item of Object.values(value)) deepFreeze(item);
  return Object.freeze(value);
}
