import { type Check, isMissing, type Known, missing } from "../../formula/index.js";
import type { Input } from "../../quantity/index.js";
import { plantApparentPower, transformerCarriesPlant, transformerNeutralSuits } from "./conditions.js";

/** How the star point of a transformer's low-voltage side is led. */
export type TransformerNeutral = "earthed" | "brought out, not earthed" | "not brought out";

/** A transformer that serves the plant. */
export interface TransformerQuestion {
  readonly at: string;
  readonly transformerPower: Known<Input<"apparentPower">>;
  /** Apparent power of each inverter behind it. */
  readonly apparentPowers: readonly Known<Input<"apparentPower">>[];
  readonly neutral: Known<TransformerNeutral>;
  /** Neutrals that the makers of the inverters allow. */
  readonly allowedNeutrals: Known<readonly TransformerNeutral[]>;
}

/**
 * Proves that a transformer carries the inverters behind it and has the neutral that they ask for.
 *
 * @param question - ratings and neutral; what is not known is said as missing
 * @throws InputError where a value lies outside its domain
 * @example
 * ```ts
 * import { proveTransformer } from "pv-to-grid/protection";
 * const checks = proveTransformer({ at: "T1", transformerPower: "400 kVA", apparentPowers: ["110 kVA", "110 kVA"], neutral: "not brought out", allowedNeutrals: ["earthed"] });
 * checks.map((check) => check.verdict).join(); // "met,not met"
 * ```
 */
export function proveTransformer(question: TransformerQuestion): readonly Check[] {
  const { at, transformerPower, apparentPowers, neutral, allowedNeutrals } = question;
  const absent = apparentPowers.flatMap((power) => (isMissing(power) ? power.missing : []));
  const known = apparentPowers.filter((power): power is Input<"apparentPower"> => !isMissing(power));
  const together =
    absent.length > 0 || known.length === 0 ? missing(...absent) : plantApparentPower({ apparentPowers: known });
  return Object.freeze([
    transformerCarriesPlant({ at, value: together, limit: transformerPower }),
    transformerNeutralSuits({ at, value: neutral, limit: allowedNeutrals }),
  ]);
}
