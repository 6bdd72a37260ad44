import { describe, expect, it } from "vitest";
import { formulas, subjectOf } from "../../src/catalogue/index.js";
import { type FormulaDeclaration, readExpression } from "../../src/formula/index.js";
import { isInputError, type Unit } from "../../src/quantity/index.js";
import { onlySubject } from "../harness/reference-data.js";
import { armCount, armsTaken, big, scopeOf } from "./big-numbers.js";
import { bare, type Draw } from "./draws.js";
import { holds, inUnits } from "./in-units.js";
import { lawfulDraw } from "./lawful-draw.js";
import { randomOf } from "./random.js";
import { bareIn, type Value, valueOf } from "./unit-values.js";

type Formula = ReturnType<typeof formulas>[number];

const DRAWS = 20;
const MORE_DRAWS = 1000;
const DIGITS = 20;

function valuesOf({ takes, constants = {} }: FormulaDeclaration, draw: Draw): Record<string, Value | readonly Value[]> {
  const values: Record<string, Value | readonly Value[]> = {};
  for (const [key, { value, unit }] of Object.entries(constants)) values[key] = valueOf(value, unit);
  for (const [key, take] of Object.entries(takes)) {
    const unit: Unit = "each" in take ? take.each : take.unit;
    const drawn = draw[key]!;
    values[key] =
      typeof drawn === "string" ? valueOf(bare(drawn), unit) : drawn.map((item) => valueOf(bare(item), unit));
  }
  return values;
}

// The bare numbers in the declared units give what the quantities give, so every number that has a unit is named.
describe("units give the declared unit with factor 1 in", () => {
  const chosen = formulas().filter(({ id }) => onlySubject === "" || subjectOf(id) === onlySubject);
  for (const formula of chosen) it(formula.id, () => expectCoherence(formula));
});

function expectCoherence(formula: Formula): void {
  const { id, declaration } = formula;
  const tree = readExpression(declaration.expression);
  const requires = (declaration.requires ?? []).map(({ that }) => readExpression(that));
  const random = randomOf(`${id} in units`);
  const due = armCount(declaration.expression);
  const taken = new Set<string>();
  let compared = 0;
  for (let run = 0; run < DRAWS || (run < MORE_DRAWS && (taken.size < due || compared === 0)); run += 1) {
    const draw = lawfulDraw(declaration, random);
    const got = bareResult(formula, draw);
    if (got === null || got.keeps === 0) continue;
    const values = valuesOf(declaration, draw);
    for (const that of requires) holds(that, values);
    const withUnits = bareIn(inUnits(tree, values), declaration.gives.unit);
    const allowed = big(got.text)
      .abs()
      .times(big(`1e-${Math.min(DIGITS, got.keeps)}`));
    const isSame = withUnits.minus(big(got.text)).abs().lte(allowed);
    expect(isSame, `${withUnits.toString()} with units, ${got.text} without, for ${JSON.stringify(draw)}`).toBe(true);
    compared += 1;
    for (const arm of armsTaken(declaration.expression, scopeOf(declaration, draw))) taken.add(arm);
  }
  expect(compared).toBeGreaterThan(0);
}

function bareResult(formula: Formula, draw: Draw): { readonly text: string; readonly keeps: number } | null {
  try {
    return (formula as (inputs: Draw) => { readonly text: string; readonly keeps: number })(draw);
  } catch (error) {
    if (isInputError(error)) return null;
    throw error;
  }
}
