import type { FormulaDeclaration } from "../../formula/index.js";
import type { PlantRecord, RecordedDeclaration, RecordedStep } from "../../plant/record/record.js";
import type { Unit } from "../../quantity/index.js";
import { absolute, type Digits, minus, order, readDigits, times } from "../digits.js";
import { conversionDue } from "./conversion.js";
import type { Due, Evaluator } from "./evaluator.js";
import { lookupDue } from "./lookup.js";

/** The part of a sizing record that holds its working. */
export type Working = Pick<PlantRecord, "steps" | "declarations">;

/** A step that another program works out otherwise than the record says. */
export interface Difference {
  readonly step: string;
  readonly id: string | null;
  readonly recorded: string;
  readonly due: string;
}

/** How many steps of each kind were worked out again, and where they differ. */
export interface Reevaluation {
  readonly recomputed: Readonly<Record<"formula" | "lookup" | "conversion" | "choice", number>>;
  readonly differences: readonly Difference[];
}

const TOLERANCE: Digits = { whole: 1n, exponent: -25 };

/**
 * Works every formula step of a record out again from its expression by another program, every lookup from the data of the
 * table, and every change of unit. Exact steps must be equal, rounded ones to 25 digits. Givens, assumptions and
 * double-precision methods are taken as they stand.
 */
export function reevaluate({ steps, declarations }: Working, evaluate: Evaluator): Reevaluation {
  const recomputed = { formula: 0, lookup: 0, conversion: 0, choice: 0 };
  const differences: Difference[] = [];
  for (const [key, step] of Object.entries(steps ?? {})) {
    if (step.kind === "given" || step.kind === "assumed" || step.kind === "model") continue;
    const due = dueOf(step, steps ?? {}, declarations, evaluate);
    recomputed[step.kind] += 1;
    const recorded = step.unit === "" ? step.value : `${step.value} ${step.unit}`;
    const differ = (text: string): number => differences.push({ step: key, id: step.id ?? null, recorded, due: text });
    if ("fault" in due) differ(due.fault);
    else if (!isSame(step, due.value)) differ(due.value);
  }
  return { recomputed, differences };
}

function dueOf(
  step: RecordedStep,
  steps: Readonly<Record<string, RecordedStep>>,
  declarations: Readonly<Record<string, RecordedDeclaration>>,
  evaluate: Evaluator,
): Due {
  const used = usedSteps(step, steps);
  if (step.kind === "conversion") return conversionDue(used["from"] as RecordedStep, step.unit as Unit, evaluate);
  const declaration = declarations[step.id ?? ""];
  if (!declaration) return { fault: "the record does not carry its declaration" };
  switch (declaration.kind) {
    case "formula":
      return formulaDue(declaration, used, step.unit, evaluate);
    case "table":
      return lookupDue(declaration, step, used, evaluate);
    case "series":
      return declaration.sizes
        .trim()
        .split(/\s+/)
        .some((size) => isSame(step, size))
        ? { value: step.value }
        : { fault: "not a size of its series" };
    default:
      return { fault: `a ${declaration.kind} makes no step` };
  }
}

type Used = Readonly<Record<string, RecordedStep | readonly RecordedStep[]>>;

function usedSteps(step: RecordedStep, steps: Readonly<Record<string, RecordedStep>>): Used {
  return Object.fromEntries(
    Object.entries(step.uses ?? {}).map(([key, id]) => [
      key,
      typeof id === "string" ? steps[id]! : id.map((one) => steps[one]!),
    ]),
  );
}

function formulaDue(declaration: FormulaDeclaration, used: Used, unit: string, evaluate: Evaluator): Due {
  const { takes, constants = {}, gives, expression, requires = [] } = declaration;
  const names: Record<string, string | readonly string[]> = {};
  for (const [key, { value }] of Object.entries(constants)) names[key] = value;
  for (const [key, take] of Object.entries(takes)) {
    const input = used[key];
    if (!input) return { fault: `${key} is missing` };
    const items = Array.isArray(input) ? (input as readonly RecordedStep[]) : [input as RecordedStep];
    const declared = "each" in take ? take.each : take.unit;
    if (items.some((item) => item.unit !== declared)) return { fault: `${key} is not in ${declared}` };
    names[key] = "each" in take ? items.map(({ value }) => value) : items[0]!.value;
  }
  const broken = requires.find(({ that }) => evaluate(that, names) !== true);
  if (broken) return { fault: `breaks the requirement ${broken.that}` };
  if (unit !== gives.unit) return { fault: `the rule gives ${gives.unit}` };
  const value = evaluate(expression, names);
  return typeof value === "string" ? { value } : { fault: "the expression gives no number" };
}

function isSame({ value, rounded }: RecordedStep, due: string): boolean {
  const [recorded, computed] = [readDigits(value), readDigits(due)];
  if (!recorded || !computed) return value === due;
  if (rounded !== true) return order(recorded, computed) === 0;
  return order(absolute(minus(recorded, computed)), times(absolute(computed), TOLERANCE)) <= 0;
}
