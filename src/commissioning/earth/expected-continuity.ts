import { isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import {
  continuityResistance,
  continuitySourceVoltageLargest,
  continuitySourceVoltageLeast,
  continuityTestCurrent,
  jointAllowance,
  largestContinuity,
  resistanceOfConductor,
} from "./continuity.js";

/** A conductor that the test current passes, at the temperature of the test. */
export interface TestedConductor {
  readonly resistancePerLength: Known<Input<"resistancePerLength">>;
  readonly length: Known<Input<"length">>;
}

/** What a continuity test should read, and how it is made. */
export interface Continuity {
  readonly expected: Known<Quantity<"resistance">>;
  readonly high: Known<Quantity<"resistance">>;
  readonly testCurrent: Quantity<"current">;
  readonly sourceVoltage: readonly [Quantity<"voltage">, Quantity<"voltage">];
}

/**
 * What a continuity test should read over conductors in series, from their lengths and resistances.
 *
 * @param conductors - the conductors, one after the other; resistance at the temperature of the test
 * @param joints - allowance for clamps and joints; left out, that of a sound bonding connection
 * @throws InputError where a value lies outside its domain, or no conductor is given
 * @example
 * ```ts
 * import { expectedContinuity } from "pv-to-grid/commissioning";
 * expectedContinuity([{ resistancePerLength: "4.61 Ω/km", length: "18 m" }]).expected; // 0.08298 Ω
 * ```
 */
export function expectedContinuity(conductors: readonly TestedConductor[], joints?: Input<"resistance">): Continuity {
  const each = conductors.map(({ resistancePerLength, length }) =>
    whenKnown({ resistancePerLength, length }, resistanceOfConductor),
  );
  const lacking = each.flatMap((resistance) => (isMissing(resistance) ? resistance.missing : []));
  const expected =
    lacking.length > 0
      ? missing(...new Set(lacking))
      : continuityResistance({ resistances: each as readonly Quantity<"resistance">[] });
  return Object.freeze({
    expected,
    high: whenKnown({ continuity: expected }, ({ continuity }) =>
      largestContinuity({ continuity, joints: joints ?? jointAllowance({}) }),
    ),
    testCurrent: continuityTestCurrent({}),
    sourceVoltage: Object.freeze([continuitySourceVoltageLeast({}), continuitySourceVoltageLargest({})] as const),
  });
}
