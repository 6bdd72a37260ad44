import { ruleById } from "../../../src/catalogue/index.js";
import { formula, type FormulaDeclaration } from "../../../src/formula/index.js";
import { isInputError } from "../../../src/quantity/index.js";
import { type Draw, drawInputs } from "../draws.js";
import { randomOf } from "../random.js";

const DRAWS = 300;

type Call = (inputs: Draw) => { readonly text: string };

function outcome(rule: Call, draw: Draw): string {
  try {
    return rule(draw).text;
  } catch (error) {
    return isInputError(error) ? error.problems.map(({ code, path }) => `${code} ${path}`).join() : String(error);
  }
}

/** For how many random inputs a changed formula gives something else than the formula itself. */
export function drawsThatDiffer(id: string, changed: object): number {
  const rule = ruleById(id);
  if (rule?.kind !== "formula") throw new Error(`${id} is no formula`);
  const other = formula(changed as FormulaDeclaration) as unknown as Call;
  const random = randomOf(`${id} changed`);
  let count = 0;
  for (let run = 0; run < DRAWS; run += 1) {
    const draw = drawInputs(rule.declaration, random);
    if (outcome(rule, draw) !== outcome(other, draw)) count += 1;
  }
  return count;
}
