import {
  blankSheetCsv,
  insulationMethods,
  insulationNotes,
  type ReadingKey,
  readingKind,
  type SheetRow,
  type WorkStep,
  workSteps,
} from "../../commissioning/index.js";
import { plantOf } from "../description/read-plant.js";
import type { PlantRecord, RecordedNumber, RecordedReading, RecordedStep, ToDo } from "../record/record.js";
import { makeRecorder, type Recorder } from "../record/recorder.js";
import { designArrays } from "../sizing/arrays.js";
import { beginSizing } from "../sizing/sizing.js";
import { circuitLimits } from "./circuit-limits.js";
import { tellingLengths } from "./judge-sheet.js";
import type { TellingLengths } from "./judged-sheet.js";
import { STRING_READINGS } from "./expected-readings.js";
import { insulationOfString } from "./string-limits.js";
import { stringPlaces } from "./string-places.js";

/** A place of the sheet that is to be filled in. */
export interface PlaceToRead {
  readonly at: string;
  readonly reading: ReadingKey;
  readonly what: string;
  readonly unit: string;
  readonly expected: RecordedNumber | null;
  readonly low: RecordedNumber | null;
  readonly high: RecordedNumber | null;
}

/** How the insulation of one string is tested. */
export interface InsulationTest {
  readonly at: string;
  readonly systemVoltage: RecordedNumber | null;
  readonly testVoltage: RecordedNumber | null;
  readonly minimum: RecordedNumber | null;
}

/** What a person needs at first switch-on: the order of work, what to set, to seal and to measure, and what to expect. */
export interface Commissioning {
  readonly plant: string;
  /** Order of work with its cautions. */
  readonly steps: readonly WorkStep[];
  readonly toSet: readonly ToDo[];
  readonly toSeal: readonly ToDo[];
  readonly toConfirm: readonly ToDo[];
  /** Expected readings of each string on three kinds of day, from the record. */
  readonly expected: readonly RecordedReading[];
  /** Every place of the measurement sheet, in the order of work. */
  readonly places: readonly PlaceToRead[];
  readonly insulation: {
    readonly tests: readonly InsulationTest[];
    readonly methods: readonly { readonly key: string; readonly label: string }[];
    readonly notes: readonly string[];
  };
  readonly tells: TellingLengths;
  readonly cautions: readonly string[];
  /** Working of the numbers that are made here; those of `expected` stand in the record. */
  readonly working: Readonly<Record<string, RecordedStep>>;
}

/**
 * What to do, to set, to seal and to measure at first switch-on of a plant, with the values to expect.
 *
 * @param record - the sizing record of the plant
 * @example
 * ```ts
 * import { commissioningOf, sizePlant } from "pv-to-grid/plant";
 * // const work = commissioningOf(sizePlant(plant));
 * // work.places[0]; // { at: "South", reading: "irradiance", unit: "W/m²", … }
 * ```
 */
export function commissioningOf(record: PlantRecord): Commissioning {
  const recorder = makeRecorder();
  const toDo = (kind: ToDo["kind"]): readonly ToDo[] => record.toDo.filter((item) => item.kind === kind);
  const { places, insulation } = toRead(record, recorder);
  return Object.freeze({
    plant: record.plant.name,
    steps: workSteps,
    toSet: toDo("set"),
    toSeal: toDo("seal"),
    toConfirm: toDo("confirm"),
    expected: record.readings,
    places,
    insulation: { tests: insulation, methods: insulationMethods, notes: insulationNotes },
    tells: tellingLengths(stringPlaces(record)),
    cautions: record.cautions,
    working: recorder.steps(),
  });
}

/** The measurement sheet of a plant to fill in, as comma-separated text. */
export function measurementSheetCsv(record: PlantRecord): string {
  const text = (number: RecordedNumber | null, unit: string, round: (value: number) => number): string =>
    number === null ? "" : `${fourDigits(number.value, round)}${number.unit === unit ? "" : ` ${number.unit}`}`;
  return blankSheetCsv(
    commissioningOf(record).places.map(({ at, reading, unit, expected, low, high }): SheetRow => ({
      at,
      reading,
      expected: text(expected, unit, Math.round),
      low: text(low, unit, Math.ceil),
      high: text(high, unit, Math.floor),
    })),
  );
}

// Paper shows four digits, and never a wider band than the record, which keeps them all.
function fourDigits(value: string, round: (value: number) => number): string {
  const number = Number(value);
  if (number === 0) return "0";
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(Math.abs(number))));
  const scaled = number * 10 ** decimals;
  const whole = Math.abs(scaled - Math.round(scaled)) < 1e-9 ? Math.round(scaled) : round(scaled);
  return String(Number((whole / 10 ** decimals).toFixed(decimals)));
}

function toRead(
  record: PlantRecord,
  recorder: Recorder,
): { places: readonly PlaceToRead[]; insulation: readonly InsulationTest[] } {
  const plant = plantOf(record.plant);
  const arrays = designArrays(beginSizing(plant, record.rules));
  const place = (at: string, reading: ReadingKey, ends: Partial<PlaceToRead> = {}): PlaceToRead => {
    const { label, unit } = readingKind(reading)!;
    return { at, reading, what: label, unit, expected: null, low: null, high: null, ...ends };
  };
  const roofs = [...new Set(record.strings.map(({ roof }) => roof))];
  const tests = stringPlaces(record).map(({ at, string }) => {
    const { module, roof } = arrays.get(string.roof)!;
    const { systemVoltage, testVoltage, minimum } = insulationOfString(
      plant,
      at,
      module,
      roof.moduleType,
      string.modules,
    );
    return {
      at,
      systemVoltage: recorder.perhaps(systemVoltage),
      testVoltage: recorder.perhaps(testVoltage),
      minimum: recorder.perhaps(minimum),
    };
  });
  const circuits = circuitLimits(plant, record).map(({ at, reading, expected, low, high }) =>
    place(at, reading, {
      expected: recorder.perhaps(expected),
      low: recorder.perhaps(low),
      high: recorder.perhaps(high),
    }),
  );
  const [open, ...further] = STRING_READINGS;
  return {
    insulation: tests,
    places: [
      ...roofs.flatMap((at) => [place(at, "irradiance"), place(at, "moduleTemperature")]),
      ...tests.flatMap(({ at, minimum }) => [
        place(at, open),
        place(at, "shortCircuitCurrent"),
        place(at, "insulationPositive", { low: minimum }),
        place(at, "insulationNegative", { low: minimum }),
      ]),
      ...circuits,
      ...tests.flatMap(({ at }) =>
        further.filter((reading) => reading !== "shortCircuitCurrent").map((reading) => place(at, reading)),
      ),
      place("", "irradiation"),
      place("", "energy"),
    ],
  };
}
