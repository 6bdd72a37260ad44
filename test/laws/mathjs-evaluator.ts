import type { Evaluator } from "../../src/evidence/reevaluation/evaluator.js";
import { big, byMathjs } from "./big-numbers.js";

const DIGITS = 45;

/** mathjs with 80 digits, as re-evaluation asks for it. */
export const mathjsEvaluator: Evaluator = (expression, names) => {
  const scope = Object.fromEntries(
    Object.entries(names).map(([key, value]) => [key, typeof value === "string" ? big(value) : value.map(big)]),
  );
  const result = byMathjs(expression, scope);
  if (typeof result === "boolean") return result;
  return result === null ? "no number" : result.toSignificantDigits(DIGITS).toFixed();
};
