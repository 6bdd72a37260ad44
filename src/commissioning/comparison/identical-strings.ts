import { type Check, isMissing, type Known, missing } from "../../formula/index.js";
import { given, type Input, type Quantity } from "../../quantity/index.js";
import { averageTolerance, stringsTolerance } from "../reading/tolerances.js";
import { averageDeviation } from "./average.js";
import { currentNearAverage, identicalCurrentsAgree, identicalVoltagesAgree } from "./conditions.js";
import { currentAgainstOthers, currentSpread, voltageAgainstOthers, voltageSpread } from "./spread.js";

/** What is compared among identical strings. */
export type ComparedReading = "openCircuitVoltage" | "shortCircuitCurrent" | "operatingCurrent";

/** Strings of equal length, module type and orientation, read under one steady light. */
export interface IdenticalStrings {
  readonly at?: string;
  readonly reading: ComparedReading;
  readonly strings: readonly { readonly at: string; readonly value: Known<Input> }[];
}

/** How identical strings agree. */
export interface StringAgreement {
  /** Largest share by which one lies above another; missing where fewer than two strings tell. */
  readonly spread: Known<Quantity<"ratio">>;
  /** Of each string: by which share it differs from the mean of the others. */
  readonly deviations: readonly { readonly at: string; readonly deviation: Known<Quantity<"ratio">> }[];
  readonly checks: readonly Check[];
}

/**
 * Compares identical strings with each other, as the standard does: every string against every other, within 5 %; the
 * operating currents against their average, as contracts do.
 *
 * @throws InputError where a reading is no quantity of its kind
 * @example
 * ```ts
 * import { identicalStrings } from "pv-to-grid/commissioning";
 * const agreement = identicalStrings({ reading: "openCircuitVoltage", strings: [{ at: "A", value: "521 V" }, { at: "B", value: "483 V" }] });
 * agreement.checks[0]!.verdict; // "not met"
 * ```
 */
export function identicalStrings({ at = "", reading, strings }: IdenticalStrings): StringAgreement {
  const unit = reading === "openCircuitVoltage" ? "V" : "A";
  const values = strings.map(({ at: string, value }) => ({
    at: string,
    value: isMissing(value) ? value : given(value as Input<"voltage" | "current">, unit),
  }));
  const telling = values.filter((string): string is { at: string; value: Quantity<"voltage"> | Quantity<"current"> } =>
    isAboveZero(string.value),
  );
  const lacking = values.flatMap((string) => (isAboveZero(string.value) ? [] : lacksOf(string)));
  const deviations = values.map((string) => ({
    at: string.at,
    deviation: deviationOf(
      reading,
      string.value,
      telling.filter((other) => other.at !== string.at).map(({ value }) => value),
    ),
  }));
  const list = telling.map(({ value }) => value);
  const spread =
    list.length < 2
      ? missing(...lacking)
      : unit === "V"
        ? voltageSpread({ stringVoltages: list as Voltages })
        : currentSpread({ stringCurrents: list as Currents });
  return Object.freeze({
    spread,
    deviations: Object.freeze(deviations),
    checks: Object.freeze(strings.length < 2 ? [] : checksOf(at, reading, spread, telling, lacking)),
  });
}

type Voltages = readonly Quantity<"voltage">[];
type Currents = readonly Quantity<"current">[];

function isAboveZero(value: Known<Quantity>): boolean {
  return !isMissing(value) && value.number > 0;
}

// A string that reads nothing, or with reversed poles, cannot be compared: the comparison is open until it is put right.
function lacksOf({ at, value }: { readonly at: string; readonly value: Known<Quantity> }): readonly string[] {
  return isMissing(value) ? value.missing : [`a reading above zero at ${at}`];
}

function deviationOf(
  reading: ComparedReading,
  value: Known<Quantity>,
  others: readonly Quantity[],
): Known<Quantity<"ratio">> {
  if (isMissing(value)) return value;
  if (others.length === 0 || !isAboveZero(value)) return missing("readings of other strings");
  return reading === "openCircuitVoltage"
    ? voltageAgainstOthers({ measuredVoltage: value as Quantity<"voltage">, stringVoltages: others as Voltages })
    : currentAgainstOthers({ measuredCurrent: value as Quantity<"current">, stringCurrents: others as Currents });
}

function checksOf(
  at: string,
  reading: ComparedReading,
  spread: Known<Quantity<"ratio">>,
  telling: readonly { readonly at: string; readonly value: Quantity }[],
  lacking: readonly string[],
): readonly Check[] {
  if (reading === "operatingCurrent") {
    const stringCurrents = telling.map(({ value }) => value) as Currents;
    return telling.map(({ at: string, value }) =>
      currentNearAverage({
        value: averageDeviation({ measuredCurrent: value as Quantity<"current">, stringCurrents }),
        limit: averageTolerance({}),
        at: string,
        ...(lacking.length === 0 ? {} : { missing: lacking }),
      }),
    );
  }
  const agree = reading === "openCircuitVoltage" ? identicalVoltagesAgree : identicalCurrentsAgree;
  const limit = stringsTolerance({});
  return [
    lacking.length === 0 ? agree({ value: spread, limit, at }) : agree({ missing: lacking, value: spread, limit, at }),
  ];
}
