import { type Check, isMissing, type Known } from "../../formula/index.js";
import { type DimensionOf, given, InputError, type Input, type Quantity } from "../../quantity/index.js";
import {
  continuityLowEnough,
  measuredLoopLowEnough,
  residualCurrentNotAbove,
  residualCurrentNotBelow,
  residualDeviceQuickEnough,
  residualDeviceWaits,
} from "../earth/conditions.js";
import { acInsulationHighEnough, insulationHighEnough } from "../insulation/conditions.js";
import {
  currentNotAboveBand,
  currentNotBelowBand,
  energyNotBelowExpected,
  neutralAtEarthPotential,
  voltageNotAboveBand,
  voltageNotBelowBand,
} from "./conditions.js";
import { type ReadingKey, readingKind } from "./reading-kinds.js";

/** A reading and the ends between which it should lie; an end that does not apply is left out. */
export interface ReadingToEvaluate {
  readonly reading: ReadingKey;
  readonly at: string;
  /** As read; missing where it was not taken. */
  readonly value: Known<Input>;
  readonly low?: Known<Input>;
  readonly high?: Known<Input>;
}

/** How a reading lies: within its ends, outside, not taken, or not to be judged while something is missing. */
export type ReadingVerdict = "within" | "outside" | "missing" | "open";

/** A reading that was judged, with its checks. */
export interface EvaluatedReading {
  readonly reading: ReadingKey;
  readonly at: string;
  readonly value: Known<Quantity>;
  readonly low: Known<Quantity> | null;
  readonly high: Known<Quantity> | null;
  readonly verdict: ReadingVerdict;
  readonly checks: readonly Check[];
  /** What a verdict still needs. */
  readonly missing: readonly string[];
}

type AnyCondition = (comparison: { value: never; limit: never; at: string }) => Check;
interface Ends {
  readonly low?: AnyCondition;
  readonly high?: AnyCondition;
}

const voltage: Ends = { low: voltageNotBelowBand, high: voltageNotAboveBand };
const current: Ends = { low: currentNotBelowBand, high: currentNotAboveBand };
const insulation: Ends = { low: insulationHighEnough };
const breaking: Ends = { low: residualDeviceWaits, high: residualDeviceQuickEnough };

/** Which conditions judge a reading; conditions of the measurement itself are not judged. */
function endsOf(reading: ReadingKey): Ends {
  switch (reading) {
    case "openCircuitVoltage":
    case "operatingVoltage":
    case "voltageL1":
    case "voltageL2":
    case "voltageL3":
      return voltage;
    case "shortCircuitCurrent":
    case "operatingCurrent":
      return current;
    case "insulationPositive":
    case "insulationNegative":
    case "insulationJoined":
      return insulation;
    case "acInsulation":
      return { low: acInsulationHighEnough };
    case "continuity":
      return { high: continuityLowEnough };
    case "loopImpedance":
      return { high: measuredLoopLowEnough };
    case "breakTime":
    case "breakTimeAtFive":
      return breaking;
    case "residualCurrent":
      return { low: residualCurrentNotBelow, high: residualCurrentNotAbove };
    case "voltageNeutral":
      return { high: neutralAtEarthPotential };
    case "energy":
      return { low: energyNotBelowExpected };
    case "irradiance":
    case "moduleTemperature":
    case "cellTemperature":
    case "irradiation":
      return {};
  }
}

/**
 * Judges a reading by the conditions of its kind: within, outside, missing where it was not taken, open where its ends are
 * not known.
 *
 * @throws InputError where the reading is no quantity of its kind, or an end is given that its kind does not have
 * @example
 * ```ts
 * import { evaluateReading } from "pv-to-grid/commissioning";
 * evaluateReading({ reading: "openCircuitVoltage", at: "INV1/A", value: "483 V", low: "494 V", high: "546 V" }).verdict; // "outside"
 * ```
 */
export function evaluateReading({ reading, at, value, low, high }: ReadingToEvaluate): EvaluatedReading {
  const { unit } = readingKind(reading)!;
  const ends = endsOf(reading);
  const quantity = (input: Known<Input>): Known<Quantity> =>
    isMissing(input) ? input : given(input as Input<DimensionOf<typeof unit>>, unit);
  const read = quantity(value);
  const checks = (
    [
      ["low", low],
      ["high", high],
    ] as const
  ).flatMap(([end, limit]) => {
    if (limit === undefined) return [];
    const condition = ends[end];
    if (!condition) throw noSuchEnd(reading, end);
    return [condition({ value: read, limit: quantity(limit), at: at === "" ? reading : `${at}/${reading}` } as never)];
  });
  return Object.freeze({
    reading,
    at,
    value: read,
    low: low === undefined ? null : quantity(low),
    high: high === undefined ? null : quantity(high),
    verdict: verdictOf(read, checks),
    checks: Object.freeze(checks),
    missing: Object.freeze([...new Set(checks.flatMap((check) => check.missing))]),
  });
}

function verdictOf(read: Known<Quantity>, checks: readonly Check[]): ReadingVerdict {
  if (isMissing(read)) return "missing";
  if (checks.some(({ verdict }) => verdict === "not met")) return "outside";
  return checks.length > 0 && checks.every(({ verdict }) => verdict === "met") ? "within" : "open";
}

function noSuchEnd(reading: ReadingKey, end: "low" | "high"): InputError {
  const message = `a reading of ${reading} has no ${end} end`;
  return new InputError("commissioning", [
    { path: end, code: "refused", message, expected: "nothing", received: "an end" },
  ]);
}
