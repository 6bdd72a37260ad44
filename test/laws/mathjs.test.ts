import { describe, expect, it } from "vitest";
import { formulas, subjectOf } from "../../src/catalogue/index.js";
import { isInputError } from "../../src/quantity/index.js";
import { runs } from "../harness/random.js";
import { onlySubject } from "../harness/reference-data.js";
import { armCount, armsTaken, big, byMathjs, scopeOf } from "./big-numbers.js";
import type { Draw } from "./draws.js";
import { lawfulDraw } from "./lawful-draw.js";
import { randomOf } from "./random.js";

type Formula = ReturnType<typeof formulas>[number];

const DIGITS = 25;
// Milliseconds: the slowest formulas have exponentials.
const PATIENCE = 10_000 + 50 * runs;
const TO_ALL_DIGITS = 0.5;
const EVALUATED = 0.95;
const MORE_DRAWS = 2000;

interface Compared {
  /** `null` where the formula has no finite result. */
  readonly digits: number | null;
  readonly fault: string | null;
}

/** One call against mathjs, to 25 digits or to as many as the result says that it can be trusted to. */
function compare(formula: Formula, draw: Draw): Compared {
  const due = byMathjs(formula.declaration.expression, scopeOf(formula.declaration, draw));
  const inputs = JSON.stringify(draw);
  try {
    const { text, keeps } = (formula as (inputs: Draw) => { readonly text: string; readonly keeps: number })(draw);
    if (due === null || typeof due === "boolean")
      return { digits: 0, fault: `gives ${text}, mathjs nothing, for ${inputs}` };
    const digits = Math.min(DIGITS, keeps);
    if (digits === 0) return { digits, fault: null };
    const distance = big(text).minus(due).abs();
    const agrees = distance.lte(due.abs().times(big(`1e-${digits}`)));
    return { digits, fault: agrees ? null : `gives ${text}, mathjs ${due.toString()}, for ${inputs}` };
  } catch (error) {
    if (!isInputError(error)) throw error;
    const isEndless = error.problems.every(({ code }) => code === "not-finite");
    return { digits: null, fault: isEndless ? null : `refuses ${inputs}: ${error.message}` };
  }
}

const chosen = formulas().filter(({ id }) => onlySubject === "" || subjectOf(id) === onlySubject);

// Consistency, not verification: another evaluator of the same expression, on inputs that nobody chose.
describe("mathjs agrees to 25 digits, on every branch, with", () => {
  for (const formula of chosen) it(formula.id, () => expectAgreement(formula), PATIENCE);
});

function expectAgreement(formula: Formula): void {
  const { id, declaration } = formula;
  const random = randomOf(id);
  const due = armCount(declaration.expression);
  const taken = new Set<string>();
  const digits: (number | null)[] = [];
  for (let run = 0; run < runs || (taken.size < due && run < MORE_DRAWS); run += 1) {
    const draw = lawfulDraw(declaration, random);
    const compared = compare(formula, draw);
    expect(compared.fault).toBeNull();
    digits.push(compared.digits);
    for (const arm of armsTaken(declaration.expression, scopeOf(declaration, draw))) taken.add(arm);
  }
  const share = (counts: (kept: number | null) => boolean): number => digits.filter(counts).length / digits.length;
  expect(
    share((kept) => kept !== null),
    "share of the draws that were evaluated",
  ).toBeGreaterThanOrEqual(EVALUATED);
  expect(
    share((kept) => kept === DIGITS),
    "share of the draws that were compared to 25 digits",
  ).toBeGreaterThanOrEqual(TO_ALL_DIGITS);
  expect([...taken].length, `arms taken: ${[...taken].sort().join(", ")}`).toBe(due);
}
