import type { FormulaDeclaration } from "../../src/formula/index.js";
import { byMathjs, scopeOf } from "./big-numbers.js";
import { type Draw, drawInputs } from "./draws.js";

const REDRAWS = 500;

/** No inputs were found that keep the requirements. */
export class NoInputs extends Error {
  override readonly name = "NoInputs";
}

/** Draws inputs that keep every requirement between symbols; throws where none are found. */
export function lawfulDraw(declaration: FormulaDeclaration, random: () => number): Draw {
  for (let attempt = 0; attempt < REDRAWS; attempt += 1) {
    const draw = drawInputs(declaration, random);
    const scope = scopeOf(declaration, draw);
    if ((declaration.requires ?? []).every(({ that }) => byMathjs(that, scope) === true)) return draw;
  }
  throw new NoInputs(`${declaration.id}: no inputs were found that keep the requirements`);
}
