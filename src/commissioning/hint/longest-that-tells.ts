import type { Check } from "../../formula/index.js";
import { given, type Input } from "../../quantity/index.js";
import { stringsTolerance, voltageTolerance } from "../reading/tolerances.js";
import { missingModuleOutsideBand, missingModuleTellsAmongStrings } from "./conditions.js";
import { lowestShare, shareWithoutOne, spreadWithoutOne } from "./missing-module.js";

/** How a missing module is to be noticed. */
export interface TellingQuestion {
  /** By the band about the expected value, or by comparison with identical strings. */
  readonly against: "expected value" | "identical strings";
  /** The contract's own tolerance; left out, 5 % as each practice has it. */
  readonly tolerance?: Input<"ratio">;
  /** Share by which meter, temperature and modules may make a reading too high; left out, an exact reading. */
  readonly uncertainty?: Input<"ratio">;
}

/** Up to which length of string a missing module is noticed. */
export interface TellingLength {
  /** Modules of the sound string; `null` where even two modules do not tell, or two hundred still do. */
  readonly modules: number | null;
  /** The check of that length, and of the next, which no longer tells. */
  readonly last: Check | null;
  readonly next: Check | null;
}

const LONGEST = 200;

/**
 * The longest string in which a missing module is noticed, found by the condition itself: n modules tell, n + 1 do not.
 *
 * @throws InputError where a share lies outside its domain
 * @example
 * ```ts
 * import { longestStringThatTells } from "pv-to-grid/commissioning";
 * longestStringThatTells({ against: "expected value" }).modules; // 19
 * longestStringThatTells({ against: "identical strings" }).modules; // 20
 * ```
 */
export function longestStringThatTells(question: TellingQuestion): TellingLength {
  let last: Check | null = null;
  for (let modules = 2; modules <= LONGEST; modules += 1) {
    const check = tells(question, modules);
    if (check.verdict !== "met")
      return Object.freeze({ modules: last === null ? null : modules - 1, last, next: check });
    last = check;
  }
  return Object.freeze({ modules: null, last, next: null });
}

function tells({ against, tolerance, uncertainty = 0 }: TellingQuestion, modules: number): Check {
  const string = { modules, uncertainty };
  if (against === "identical strings") {
    const limit = tolerance === undefined ? stringsTolerance({}) : given(tolerance, "1");
    return missingModuleTellsAmongStrings({ value: spreadWithoutOne(string), limit, at: String(modules) });
  }
  const limit = lowestShare({ bandTolerance: tolerance === undefined ? voltageTolerance({}) : given(tolerance, "1") });
  return missingModuleOutsideBand({ value: shareWithoutOne(string), limit, at: String(modules) });
}
