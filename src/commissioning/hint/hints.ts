import { isMissing, type Known } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { evaluateReading } from "../evaluation/evaluate-reading.js";
import { voltageWithoutSign } from "../evaluation/magnitude.js";
import type { Band } from "../reading/bands.js";
import { type HintKey, hintKinds } from "./hint-kinds.js";
import { modulesRead, voltageOfModule } from "./modules-read.js";

/** A string as it was read, beside what it should read. */
export interface ReadString {
  readonly at: string;
  readonly modules: number;
  readonly expected: {
    readonly openCircuitVoltage: Band<"voltage">;
    readonly shortCircuitCurrent: Band<"current">;
    readonly operatingVoltage: Band<"voltage">;
    readonly operatingCurrent: Band<"current">;
  };
  readonly openCircuitVoltage: Known<Quantity<"voltage">>;
  readonly shortCircuitCurrent: Known<Quantity<"current">>;
  readonly operatingVoltage: Known<Quantity<"voltage">>;
  readonly operatingCurrent: Known<Quantity<"current">>;
}

/** A suggestion where to look. Never a verdict. */
export interface Hint {
  readonly key: HintKey;
  /** The strings that it is about. */
  readonly at: readonly string[];
  readonly text: string;
  /** The number that led to it: modules that a voltage reads like. */
  readonly modulesRead: Quantity<"ratio"> | null;
}

type Lies = "below" | "within" | "above" | "unknown";

function lies<D extends "voltage" | "current">(
  value: Known<Quantity<D>>,
  { low, high }: Band<D>,
  reading: "openCircuitVoltage" | "shortCircuitCurrent",
): Lies {
  if (isMissing(value) || isMissing(low) || isMissing(high)) return "unknown";
  const [isLow, isHigh] = evaluateReading({ reading, at: "", value, low, high }).checks.map(({ verdict }) => verdict);
  if (isLow === "not met") return "below";
  if (isHigh === "not met") return "above";
  return isLow === "met" && isHigh === "met" ? "within" : "unknown";
}

function hint(key: HintKey, at: readonly string[], read: Quantity<"ratio"> | null = null): Hint {
  return Object.freeze({ key, at: Object.freeze([...at]), text: hintKinds[key], modulesRead: read });
}

/** The size of a voltage, whichever way the leads were. */
function sizeOf(value: Known<Quantity<"voltage">>): Known<Quantity<"voltage">> {
  return !isMissing(value) && value.number < 0 ? voltageWithoutSign({ signedVoltage: value }) : value;
}

// Shares of a module by which a hint is chosen; common practice, and without effect on any verdict.
const NEARLY_NOTHING = 0.5;
const ONE_MODULE = [0.7, 1.3] as const;
const NEARLY_NO_CURRENT = 0.1;
const TWO_STRINGS = [1.8, 2.2] as const;

/**
 * What the readings of some strings suggest: a missing module, reversed poles, a wrong length, swapped strings, shade.
 *
 * @example
 * ```ts
 * import { expectedReadings, hintsFor } from "pv-to-grid/commissioning";
 * // const expected = expectedReadings({ module, modules: 14, cellTemperature: "45 °C", irradiance: "800 W/m2" });
 * // hintsFor([{ at: "A", modules: 14, expected, openCircuitVoltage, … }])[0].key; // "oneModuleFewer"
 * ```
 */
export function hintsFor(strings: readonly ReadString[]): readonly Hint[] {
  const swapped = swappedPairs(strings);
  const inPairs = new Set(swapped.flatMap(({ at }) => at));
  const common = deviateAlike(strings);
  const single = strings.flatMap((string) => [
    ...(inPairs.has(string.at) ? [] : voltageHints(string, common !== null)),
    ...currentHints(string),
    ...workingHints(string),
  ]);
  return Object.freeze([...(common ? [common] : []), ...swapped, ...single]);
}

function voltageHints(string: ReadString, common: boolean): readonly Hint[] {
  const { at, modules, openCircuitVoltage: value, expected } = string;
  const band = expected.openCircuitVoltage;
  if (isMissing(value) || isMissing(band.expected)) return [];
  const reversed = value.number < 0 ? [hint("reversedPolarity", [at])] : [];
  const size = sizeOf(value) as Quantity<"voltage">;
  const moduleVoltage = voltageOfModule({ expectedVoltage: band.expected, modules });
  if (size.number <= NEARLY_NOTHING * moduleVoltage.number) return [hint("noVoltage", [at])];
  const read = modulesRead({ measuredVoltage: size, moduleVoltage });
  const lack = modules - read.number;
  const where = lies(size, band, "openCircuitVoltage");
  if (where === "within" || where === "unknown" || common) return reversed;
  if (where === "above") return [...reversed, hint(lack < -ONE_MODULE[0] ? "modulesMore" : "colderOrMore", [at], read)];
  if (lack < ONE_MODULE[0]) return [...reversed, hint("partOfModule", [at], read)];
  return [...reversed, hint(lack <= ONE_MODULE[1] ? "oneModuleFewer" : "modulesFewer", [at], read)];
}

function currentHints({ at, shortCircuitCurrent: value, expected, ...string }: ReadString): readonly Hint[] {
  const band = expected.shortCircuitCurrent;
  if (isMissing(value) || isMissing(band.expected) || band.expected.number === 0) return [];
  const share = value.number / band.expected.number;
  const where = lies(value, band, "shortCircuitCurrent");
  const voltage = lies(sizeOf(string.openCircuitVoltage), expected.openCircuitVoltage, "openCircuitVoltage");
  if (where === "below" && voltage === "within")
    return [hint(share < NEARLY_NO_CURRENT ? "noCurrent" : "lessCurrent", [at])];
  if (where !== "above") return [];
  return [hint(share >= TWO_STRINGS[0] && share <= TWO_STRINGS[1] ? "twiceCurrent" : "moreCurrent", [at])];
}

function workingHints({ at, operatingVoltage, operatingCurrent, expected }: ReadString): readonly Hint[] {
  const voltage = lies(operatingVoltage, expected.operatingVoltage, "openCircuitVoltage");
  const current = lies(operatingCurrent, expected.operatingCurrent, "shortCircuitCurrent");
  if (voltage === "below" && current === "within") return [hint("bypassed", [at])];
  return voltage === "above" && current === "below" ? [hint("throttled", [at])] : [];
}

/** Pairs of strings of unequal length, each of which reads what the other should. */
function swappedPairs(strings: readonly ReadString[]): readonly Hint[] {
  const fits = (read: ReadString, due: ReadString): boolean =>
    lies(sizeOf(read.openCircuitVoltage), due.expected.openCircuitVoltage, "openCircuitVoltage") === "within";
  return strings.flatMap((one, index) =>
    strings
      .slice(index + 1)
      .filter(
        (other) =>
          one.modules !== other.modules &&
          !fits(one, one) &&
          !fits(other, other) &&
          fits(one, other) &&
          fits(other, one),
      )
      .map((other) => hint("swappedStrings", [one.at, other.at])),
  );
}

/** Whether every string lies outside its band on the same side by about the same share. */
function deviateAlike(strings: readonly ReadString[]): Hint | null {
  const read = strings.flatMap(({ at, openCircuitVoltage, expected: { openCircuitVoltage: band } }) =>
    isMissing(openCircuitVoltage) || isMissing(band.expected)
      ? []
      : [{ at, value: openCircuitVoltage, band, expected: band.expected }],
  );
  if (read.length < 2 || read.length < strings.length) return null;
  const sides = new Set(read.map(({ value, band }) => lies(sizeOf(value), band, "openCircuitVoltage")));
  const [side] = sides;
  if (sides.size > 1 || side === "within" || side === "unknown") return null;
  const shares = read.map(({ value, expected }) => Math.abs(value.number) / expected.number);
  const alike = Math.max(...shares) - Math.min(...shares) < ALIKE;
  return alike
    ? hint(
        "allAlike",
        read.map(({ at }) => at),
      )
    : null;
}

const ALIKE = 0.02;
