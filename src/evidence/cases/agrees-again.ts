import { isInputError } from "../../quantity/index.js";
import { type Changes, replay } from "../replay.js";
import { type Holder, leafAt } from "./call.js";
import type { JudgedCase } from "./counting.js";
import { judge } from "./judgement.js";

/**
 * Whether a case still agrees with its working done again under changes; `null` where a rule refuses what they lead to.
 * A case that leans on the ranges of its inputs is taken to agree, since a change might hide in them.
 */
export function agreesAgain(one: JudgedCase, holder: Holder, changes: Partial<Changes>): boolean | null {
  if (one.case.inputsRounded) return true;
  try {
    const again = replay(holder, changes);
    return again === holder || judge(leafAt(again, one.found?.rest ?? "").leaf, one.case.expected).agrees;
  } catch (error) {
    if (isInputError(error)) return null;
    throw error;
  }
}
