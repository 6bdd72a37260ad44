import {
  type ExpectedReadings,
  expectedReadings,
  readingKind,
  typicalIrradianceFactor,
} from "../../commissioning/index.js";
import type { Known } from "../../formula/index.js";
import type { Module } from "../../module/index.js";
import type { Input } from "../../quantity/index.js";
import type { Plant } from "../description/plant-description.js";
import type { RecordedReading } from "../record/record.js";
import type { Recorder } from "../record/recorder.js";

/** The four readings of a string that have an expected value. */
export const STRING_READINGS = [
  "openCircuitVoltage",
  "shortCircuitCurrent",
  "operatingVoltage",
  "operatingCurrent",
] as const;

/** Light and warmth for which a record tells what to expect: a dull, a bright and a clear day. */
const DAYS = [
  { irradiance: "500 W/m2", cellTemperature: "30 °C", at: "500 W/m², cells at 30 °C" },
  { irradiance: "800 W/m2", cellTemperature: "45 °C", at: "800 W/m², cells at 45 °C" },
  { irradiance: "1000 W/m2", cellTemperature: "60 °C", at: "1000 W/m², cells at 60 °C" },
] as const;

/** A string in some light. */
export interface StringInLight {
  readonly moduleType: Plant["moduleTypes"][string];
  readonly module: Module;
  readonly modules: number;
  readonly irradiance: Known<Input<"irradiance">>;
  readonly cellTemperature: Known<Input<"temperature">>;
}

/** What a string should read; the voltage of crystalline silicon falls in weak light by the factor that is typical of it. */
export function readingsInLight({ moduleType, ...string }: StringInLight): ExpectedReadings {
  const thin = moduleType.technology === "thin film";
  return expectedReadings({ ...string, ...(thin ? {} : { irradianceFactor: typicalIrradianceFactor({}) }) });
}

/** Equal strings of one roof on one tracker, as far as their readings go. */
interface Group {
  readonly inverter: { readonly name: string };
  readonly tracker: { readonly name: string };
  readonly array: { readonly roof: Plant["roofs"][number]; readonly module: Module };
  readonly modules: number;
}

/** What the strings of a plant should read on three kinds of day, for the record. */
export function recordedReadings(
  plant: Plant,
  groups: readonly Group[],
  recorder: Recorder,
): readonly RecordedReading[] {
  const known = new Map<string, readonly Pick<RecordedReading, "what" | "at" | "expected" | "low" | "high">[]>();
  return groups.flatMap(({ inverter, tracker, array: { roof, module }, modules }) => {
    const key = `${roof.moduleType}\n${modules}`;
    const rows =
      known.get(key) ?? rowsOf({ moduleType: plant.moduleTypes[roof.moduleType]!, module, modules }, recorder);
    known.set(key, rows);
    return rows.map((row) => ({ inverter: inverter.name, tracker: tracker.name, roof: roof.name, ...row }));
  });
}

function rowsOf(string: Pick<StringInLight, "moduleType" | "module" | "modules">, recorder: Recorder) {
  return DAYS.flatMap(({ at, ...light }) => {
    const readings = readingsInLight({ ...string, ...light });
    return STRING_READINGS.map((reading) => {
      const { expected, low, high } = readings[reading];
      return {
        what: readingKind(reading)!.label,
        at,
        expected: recorder.perhaps(expected),
        low: recorder.perhaps(low),
        high: recorder.perhaps(high),
      };
    });
  });
}
