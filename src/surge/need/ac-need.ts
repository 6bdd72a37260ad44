import { type Check, isMissing, type Known, missing, whenKnown } from "../../formula/index.js";
import type { Input, Quantity } from "../../quantity/index.js";
import type { Consequence, Surroundings } from "../lists.js";
import {
  calculatedRiskLevel,
  environmentalFactorOf,
  iec60364_4_44_2007_surroundings,
  riskAssessmentLengthOf,
  riskLevelHighEnough,
} from "./risk-level.js";
import { riskLevelLimit } from "../limits.js";

/** Lines that lead to the installation, up to the first kilometre or the first surge protective device. */
export interface SupplyLines {
  readonly lowVoltageOverhead: Input<"length">;
  readonly lowVoltageBuried: Input<"length">;
  readonly highVoltageOverhead: Input<"length">;
  readonly highVoltageBuried: Input<"length">;
}

/** What decides whether the a.c. side needs surge protection. */
export interface AcNeedQuestion {
  readonly at: string;
  readonly consequence: Known<Consequence>;
  readonly surroundings: Known<Surroundings>;
  /** National factor of the surroundings, 1 to 3. */
  readonly nationalFactor: Known<Input<"ratio">>;
  readonly lines: Known<SupplyLines>;
  readonly lightningDensity: Known<Input<"flashDensity">>;
}

/** Whether protection is needed, and what says so. */
export interface Need {
  /** Needed or not, or what is missing for the answer. */
  readonly needed: Known<boolean>;
  readonly because: string;
  readonly checks: readonly Check[];
}

/** The need on the a.c. side with its calculated risk level. */
export interface AcNeed extends Need {
  readonly riskLevel: Known<Quantity<"ratio">>;
}

/**
 * Whether the a.c. side needs surge protection: by its consequences whatever the risk level, else by the calculated risk level.
 *
 * @param question - consequence, surroundings, lines and flash density; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { acSurgeNeed } from "pv-to-grid/surge";
 * const need = acSurgeNeed({
 *   at: "Main board", consequence: "none of these", surroundings: "rural", nationalFactor: 1, lightningDensity: "1",
 *   lines: { lowVoltageOverhead: "0.4 km", lowVoltageBuried: "0 km", highVoltageOverhead: "0.6 km", highVoltageBuried: "0 km" },
 * });
 * need.needed; // true
 * ```
 */
export function acSurgeNeed(question: AcNeedQuestion): AcNeed {
  const { at, consequence, surroundings, nationalFactor, lines, lightningDensity } = question;
  const riskLevel = whenKnown({ surroundings, nationalFactor, lines, lightningDensity }, (known) =>
    calculatedRiskLevel({
      environmentalFactor: environmentalFactorOf({
        surroundingsFactor: iec60364_4_44_2007_surroundings({ surroundings: known.surroundings }),
        nationalFactor: known.nationalFactor,
      }),
      riskAssessmentLength: riskAssessmentLengthOf(known.lines),
      lightningDensity: known.lightningDensity,
    }),
  );
  if (!isMissing(consequence) && consequence !== "none of these") {
    const because = `an overvoltage could harm: ${consequence}; protection is needed whatever the risk level`;
    return Object.freeze({ needed: true, because, checks: [], riskLevel });
  }
  const check = riskLevelHighEnough({ at, value: riskLevel, limit: riskLevelLimit({ rule: "none asked for from" }) });
  if (check.verdict === "not met") {
    return Object.freeze({
      needed: true,
      because: "the calculated risk level is below 1000",
      checks: [check],
      riskLevel,
    });
  }
  const open = [...(isMissing(consequence) ? consequence.missing : []), ...check.missing];
  if (open.length > 0) {
    return Object.freeze({
      needed: missing(...open),
      because: "the inputs do not decide it",
      checks: [check],
      riskLevel,
    });
  }
  const decided = check.verdict === "met";
  const because = decided
    ? "no consequence asks for it and the risk level is high enough"
    : "the risk level is too near its limit";
  return Object.freeze({ needed: !decided, because, checks: [check], riskLevel });
}
