import type { Catalogue, Rule } from "../../catalogue/catalogue.js";
import { isQuantity } from "../../quantity/index.js";
import { agreement } from "../agreement.js";
import { resultOf } from "../cases/call.js";
import { type Digits, lastDigit, order, readDigits } from "../digits.js";
import type { FormulaGuard } from "../formats/index.js";
import { lastDigitShifts, type ShippedCell } from "./grid.js";
import type { GuardedCell } from "./run-guard.js";

type Values = Readonly<Record<string, string | readonly string[]>>;

/** Computes each compared cell by the law that the standard gives for it. */
export function lawfulCells(
  guard: FormulaGuard,
  rule: Extract<Rule, { readonly kind: "table" | "series" }>,
  shipped: readonly ShippedCell[],
  from: Catalogue,
): { readonly cells: readonly GuardedCell[]; readonly problems: readonly string[] } {
  const gives = rule.kind === "table" ? rule.declaration.gives : { unit: rule.declaration.unit };
  if (!("unit" in gives)) return { cells: [], problems: ["a law gives numbers, and this table gives names"] };
  const except = new Map((guard.except ?? []).map(({ cell, why }) => [cell, why]));
  const problems = [...except.keys()]
    .filter((place) => !shipped.some((cell) => cell.place === place))
    .map((place) => `the table has no cell ${place}`);
  const cells: GuardedCell[] = [];
  for (const cell of shipped) {
    const inputs = inputsFor(guard, rule, cell);
    if (!inputs) continue;
    const computed = resultOf(guard.rule, inputs, "", from).leaf;
    if (!isQuantity(computed)) throw new Error(`${guard.rule} gives no quantity`);
    const due = computed.in(gives.unit).text;
    const agrees = follows(due, cell.text, guard);
    const noticesShift = agrees && lastDigitShifts(cell.text).some((text) => !follows(due, text, guard));
    if (!except.has(cell.place)) cells.push({ place: cell.place, shipped: cell.text, due, agrees, noticesShift });
    else if (agrees) problems.push(`${cell.place} is excepted, but follows the law`);
  }
  if (cells.length === 0) problems.push("the guard compares nothing");
  return { cells, problems };
}

function inputsFor(guard: FormulaGuard, rule: Rule, { row, column }: ShippedCell): Values | undefined {
  const ofColumn = guard.perColumn ? guard.perColumn[column.join(" | ")] : {};
  const ofRow = guard.perRow ? guard.perRow[row] : {};
  if (!ofColumn || !ofRow) return undefined;
  const heading = rule.kind === "table" ? rule.declaration.rows : undefined;
  const unit = heading && "unit" in heading ? heading.unit : "1";
  const own: Values = guard.row === "" ? {} : { [guard.row]: unit === "1" ? row : `${row} ${unit}` };
  return { ...guard.fixed, ...ofColumn, ...ofRow, ...own };
}

function follows(due: string, text: string, guard: FormulaGuard): boolean {
  const [computed, printed] = [readDigits(due), readDigits(text)];
  if (!computed || !printed) return false;
  return agreement(computed, printed, guard.rounding, unitFor(computed, printed, guard)).agrees;
}

function unitFor(computed: Digits, printed: Digits, { digits, steps }: FormulaGuard): Digits {
  const step = steps?.find(({ below }) => below === undefined || order(computed, readDigits(below)!) < 0);
  if (step) return readDigits(step.is)!;
  return typeof digits === "number" ? { whole: 1n, exponent: -digits } : lastDigit(printed);
}
