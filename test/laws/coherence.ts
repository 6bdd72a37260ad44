import { formula, type FormulaDeclaration, readExpression } from "../../src/formula/index.js";
import { isInputError, type Unit } from "../../src/quantity/index.js";
import { armCount, armsTaken, big, scopeOf } from "./big-numbers.js";
import { bare, type Draw } from "./draws.js";
import { holds, inUnits } from "./in-units.js";
import { lawfulDraw } from "./lawful-draw.js";
import { randomOf } from "./random.js";
import { bareIn, type Value, valueOf } from "./unit-values.js";

const DRAWS = 20;
const MORE_DRAWS = 1000;
const DIGITS = 20;

type Call = (inputs: Draw) => { readonly text: string; readonly keeps: number };

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

function bareResult(rule: Call, draw: Draw): ReturnType<Call> | null {
  try {
    return rule(draw);
  } catch (error) {
    if (isInputError(error)) return null;
    throw error;
  }
}

/** No inputs were found on which a formula could be compared with itself in units. */
export class NothingToCompare extends Error {
  override readonly name = "NothingToCompare";
}

/**
 * Where the bare numbers of a formula, in its declared units, do not give what the same quantities give with their units;
 * `null` where they do on every branch. Throws where kinds do not fit.
 */
export function incoherence(declaration: FormulaDeclaration): string | null {
  const rule = formula(declaration) as unknown as Call;
  const tree = readExpression(declaration.expression);
  const requires = (declaration.requires ?? []).map(({ that }) => readExpression(that));
  const random = randomOf(`${declaration.id} in units`);
  const due = armCount(declaration.expression);
  const taken = new Set<string>();
  let compared = 0;
  for (let run = 0; run < DRAWS || (run < MORE_DRAWS && (taken.size < due || compared === 0)); run += 1) {
    const draw = lawfulDraw(declaration, random);
    const got = bareResult(rule, draw);
    if (got === null || got.keeps === 0) continue;
    const values = valuesOf(declaration, draw);
    for (const that of requires) holds(that, values);
    const withUnits = bareIn(inUnits(tree, values), declaration.gives.unit);
    const allowed = big(got.text)
      .abs()
      .times(big(`1e-${Math.min(DIGITS, got.keeps)}`));
    if (!withUnits.minus(big(got.text)).abs().lte(allowed)) {
      return `${withUnits.toString()} with units, ${got.text} without, for ${JSON.stringify(draw)}`;
    }
    compared += 1;
    for (const arm of armsTaken(declaration.expression, scopeOf(declaration, draw))) taken.add(arm);
  }
  if (compared === 0) throw new NothingToCompare(declaration.id);
  return null;
}
