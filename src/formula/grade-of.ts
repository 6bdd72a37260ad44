import { isQuantity, type ConversionOrigin, type Quantity } from "../quantity/quantity.js";
import { bestGrade, type Grade, weaker } from "../source/grade.js";
import type { AssumedOrigin } from "./assumed.js";
import type { ChoiceOrigin } from "./choose.js";
import type { FormulaDeclaration } from "./declaration.js";
import type { FormulaOrigin } from "./formula.js";
import type { Inputs } from "./inputs.js";
import type { ModelOrigin } from "./model.js";
import { isNamed, type Named } from "./named.js";
import type { LookupOrigin } from "./table.js";

const remembered = /* @__PURE__ */ new WeakMap<object, Grade | null>();

/** The weakest grade among the rules, constants and cells that made a value; `null` for a plain input. */
export function gradeOf(value: Quantity | Named | readonly string[] | string | null): Grade | null {
  if (value === null || typeof value === "string" || !(isQuantity(value) || isNamed(value))) return null;
  const known = remembered.get(value);
  if (known !== undefined) return known;
  const grade = gradeOfOrigin(value.origin as AnyOrigin);
  remembered.set(value, grade);
  return grade;
}

type AnyOrigin =
  | { readonly kind: "given" }
  | AssumedOrigin
  | ConversionOrigin
  | FormulaOrigin
  | ModelOrigin
  | LookupOrigin
  | ChoiceOrigin;

function gradeOfOrigin(origin: AnyOrigin): Grade | null {
  switch (origin.kind) {
    case "given":
      return null;
    case "assumed":
      return bestGrade(origin.source);
    case "conversion":
      return gradeOf(origin.from);
    case "formula":
      return weaker(ownGrade(origin.rule), inputsGrade(origin.inputs));
    case "model":
      return weaker(bestGrade(origin.rule.source), inputsGrade(origin.inputs));
    case "lookup":
      return typeof origin.asked === "string" ? origin.grade : weaker(origin.grade, gradeOf(origin.asked));
    case "choice":
      return bestGrade(origin.rule.source);
  }
}

/** Grade of a formula: its best source, weakened by its constants. */
export function ownGrade({ source, constants = {} }: FormulaDeclaration): Grade | null {
  return Object.values(constants).reduce(
    (weakest, constant) => weaker(weakest, bestGrade(constant.source)),
    bestGrade(source),
  );
}

function inputsGrade(inputs: Inputs): Grade | null {
  return Object.values(inputs)
    .flat()
    .reduce<Grade | null>((weakest, quantity) => weaker(weakest, gradeOf(quantity)), null);
}
