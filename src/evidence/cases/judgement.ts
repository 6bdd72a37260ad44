import { isMissing, isNamed } from "../../formula/index.js";
import { given, isQuantity, type Unit, unitFromText } from "../../quantity/index.js";
import { agreement, sideOf } from "../agreement.js";
import { readDigits } from "../digits.js";
import type { Case } from "../formats/index.js";
import { CaseFault } from "./call.js";

/** A computed result against a printed one. */
export interface Judgement {
  readonly agrees: boolean;
  /** The computed result as text, every digit, in the printed unit. */
  readonly computed: string;
  readonly share: string | null;
  /** On which side of the printed value the computed one lies; 0 where it agrees or is no number. */
  readonly side: -1 | 0 | 1;
}

/** A number as a sizing record has it. */
function isRecorded(leaf: unknown): leaf is { readonly value: string; readonly unit: Unit } {
  return typeof leaf === "object" && leaf !== null && "value" in leaf && "unit" in leaf && "step" in leaf;
}

function textOf(leaf: unknown, unit: string): string {
  if (isQuantity(leaf)) {
    const due = unitFromText(unit === "" ? "1" : unit);
    if (due === undefined) throw new CaseFault(`"${unit}" is not a unit`);
    return leaf.in(due).text;
  }
  if (isRecorded(leaf)) return textOf(given(leaf.value, leaf.unit), unit);
  if (isNamed(leaf)) return leaf.name;
  if (isMissing(leaf)) return "open";
  if (typeof leaf === "object" && leaf !== null && "verdict" in leaf) return String(leaf.verdict);
  if (typeof leaf === "string" || typeof leaf === "number" || typeof leaf === "boolean") return String(leaf);
  if (leaf === null) return "none";
  throw new CaseFault("the path does not lead to a value");
}

/** Judges a result by the printed digits; names, verdicts and sizes by equality. */
export function judge(leaf: unknown, { printed, unit, rounding }: Case["expected"]): Judgement {
  const computed = textOf(leaf, unit);
  const [c, p] = [readDigits(computed), readDigits(printed)];
  if (!c || !p) {
    if (rounding !== "exact") throw new CaseFault(`"${printed}" against "${computed}": only "exact" compares names`);
    return { agrees: computed === printed, computed, share: null, side: 0 };
  }
  return { ...agreement(c, p, rounding), computed, side: sideOf(c, p, rounding) };
}
