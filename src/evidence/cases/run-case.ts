import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { isInputError } from "../../quantity/index.js";
import type { Case } from "../formats/index.js";
import { type Found, resultOf } from "./call.js";
import { judge, type Judgement } from "./judgement.js";
import { inputsWith, numbersOf, type Point } from "./printed-inputs.js";
import { searchRanges } from "./rounded-inputs.js";

/** What came of a case. */
export interface Outcome {
  readonly case: Case;
  /** `disputed` where an erratum speaks against the print; `fails` where the case cannot be run. */
  readonly status: "agrees" | "deviates" | "disputed" | "fails";
  /** Whether the computed value agrees with the print, whatever an erratum says. */
  readonly agrees: boolean;
  readonly computed: string | null;
  readonly share: string | null;
  /** Why a case fails. */
  readonly problem: string | null;
  /** What was judged, with the value whose working leads to it. */
  readonly found: Found | null;
}

/** Runs a case with some numbers of its inputs replaced, within the ranges of rounded inputs where the case says so. */
export function judgeWith(one: Case, replaced: Point, from: Catalogue): Judgement | null {
  const judgeAt = (point: Point): Judgement | null => {
    try {
      return judge(resultOf(one.checks, inputsWith(one, point), one.at, from).leaf, one.expected);
    } catch (error) {
      if (isInputError(error)) return null;
      throw error;
    }
  };
  if (!one.inputsRounded || one.expected.rounding === "exact") return judgeAt(replaced);
  return searchRanges(numbersOf(one), replaced, judgeAt);
}

/** Runs one case. */
export function runCase(one: Case, from: Catalogue = catalogue()): Outcome {
  const base = { case: one, agrees: false, computed: null, share: null, found: null };
  try {
    const found = resultOf(one.checks, inputsWith(one), one.at, from);
    const nominal = judge(found.leaf, one.expected);
    const judged = one.inputsRounded && !nominal.agrees ? (judgeWith(one, new Map(), from) ?? nominal) : nominal;
    const status = one.erratum !== null ? "disputed" : judged.agrees ? "agrees" : "deviates";
    const share = one.inputsRounded && nominal.agrees ? "0" : judged.share;
    return { case: one, status, agrees: judged.agrees, computed: nominal.computed, share, problem: null, found };
  } catch (error) {
    return { ...base, status: "fails", problem: error instanceof Error ? error.message : String(error) };
  }
}

/** Runs cases, each on its own. */
export function runCases(cases: readonly Case[], from: Catalogue = catalogue()): readonly Outcome[] {
  return cases.map((one) => runCase(one, from));
}
