import type { Check } from "../../formula/index.js";
import { InputError, isQuantity, type Quantity } from "../../quantity/index.js";
import { whole } from "../count.js";
import { voltageAboveLimit, voltageBelowLimit } from "./mpp-voltage.js";
import { type StringInput, type StringLimit, stringLimits } from "./string-limits.js";

/** How far a string is from one of its limits. */
export interface StringMargin {
  readonly key: string;
  readonly check: string;
  /** Voltage that is left; negative where the limit is passed. */
  readonly volts: Quantity<"voltage">;
  /** Modules that are left; negative where there are too many or too few. */
  readonly modules: Quantity<"ratio">;
}

/** A string of a stated length, judged. */
export interface CheckedString {
  readonly modules: Quantity<"ratio">;
  readonly checks: readonly Check[];
  readonly margins: readonly StringMargin[];
}

/**
 * Judges a string of a stated number of modules against every limit, with the margin in volts and in modules.
 *
 * @throws InputError for a count that is not whole or not positive, or a voltage that cannot be one
 * @example
 * ```ts
 * import { stringChecks } from "pv-to-grid/string";
 * const checked = stringChecks({
 *   modules: 24,
 *   module: { coldOpenCircuitVoltage: "43.2 V", hotMppVoltage: "28.1 V", hotOpenCircuitVoltage: "34.9 V" },
 *   ceilings: [{ key: "inverter", limit: "1000 V" }],
 *   mppVoltageRange: ["200 V", "850 V"], startVoltage: "180 V", voltageDrop: "1 %",
 * });
 * checked.checks[0]?.verdict; // "not met"
 * checked.checks[0]?.remedy; // "at most 23 modules in series"
 * ```
 */
export function stringChecks(input: StringInput & { readonly modules: number }): CheckedString {
  const { modules, at = "" } = input;
  if (!Number.isInteger(modules) || modules < 1) {
    const message = "a string has a whole number of modules, one or more";
    throw new InputError("string/string-checks", [
      { path: "modules", code: "out-of-domain", message, expected: "1 or more", received: String(modules) },
    ]);
  }
  const judged = stringLimits(input).map((limit) => judge(limit, modules));
  return Object.freeze({
    modules: whole(modules, at === "" ? undefined : `string of ${at}`),
    checks: Object.freeze(judged.map(({ check }) => check)),
    margins: Object.freeze(judged.flatMap(({ margin }) => margin ?? [])),
  });
}

function judge(limit: StringLimit, modules: number): { check: Check; margin: StringMargin | null } {
  const check = limit.check(modules);
  if (!isQuantity(check.value) || !isQuantity(check.limit)) return { check, margin: null };
  const turn = limit.turn().count;
  const count = turn?.number ?? 0;
  const sides = { voltage: check.value as Quantity<"voltage">, voltageLimit: check.limit as Quantity<"voltage"> };
  const longest = limit.end === "longest";
  const margin = Object.freeze({
    key: limit.key,
    check: check.id,
    volts: (longest ? voltageBelowLimit : voltageAboveLimit)(sides),
    modules: whole(longest ? count - modules : modules - count),
  });
  if (check.verdict !== "not met") return { check, margin };
  const due = longest ? `at most ${count} modules in series` : `at least ${count} modules in series`;
  const remedy = turn === null ? "no module of this type: one alone exceeds the limit" : due;
  return { check: Object.freeze({ ...check, remedy }), margin };
}
