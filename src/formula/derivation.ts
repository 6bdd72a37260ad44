import { isQuantity, type ConversionOrigin, type GivenOrigin, type Quantity } from "../quantity/quantity.js";
import type { Citation } from "../source/citation.js";
import type { Grade } from "../source/grade.js";
import type { AssumedOrigin } from "./assumed.js";
import type { ChoiceOrigin } from "./choose.js";
import type { FormulaDeclaration } from "./declaration.js";
import { equationText } from "./equation-text.js";
import { readExpression, type Expression } from "./expression.js";
import type { FormulaOrigin } from "./formula.js";
import { gradeOf } from "./grade-of.js";
import type { ModelOrigin } from "./model.js";
import type { Named } from "./named.js";
import type { LookupOrigin } from "./table.js";

/** One step of a working, for a reader and for re-evaluation. */
export interface Step {
  /** What the step found: a quantity or a named value. */
  readonly of: Quantity | Named;
  readonly kind: Quantity["origin"]["kind"];
  /** The rule or table, or `null` for an input or a conversion. */
  readonly id: string | null;
  readonly symbol: string;
  readonly about: string;
  readonly equation: string | null;
  readonly substituted: string | null;
  readonly result: string;
  readonly source: readonly Citation[];
  readonly grade: Grade | null;
  /** What went in, by key. */
  readonly uses: Uses;
  /** Row and column of a lookup, reasons of a choice, place of an input. */
  readonly detail: string | null;
}

type AnyOrigin =
  GivenOrigin | AssumedOrigin | ConversionOrigin | FormulaOrigin | ModelOrigin | LookupOrigin | ChoiceOrigin;

/** Value and unit with every digit, as the working prints it. */
export function exactText(value: Quantity | Named): string {
  if (!isQuantity(value)) return value.name;
  const text = value.text.replace(/^-/, "−");
  return value.unit === "1" ? text : `${text} ${value.unit}`;
}

/** What went into a value, by key of its rule. */
export type Uses = Readonly<Record<string, Quantity | Named | readonly Quantity[]>>;

const NOTHING: Uses = /* @__PURE__ */ Object.freeze({});

/** What went straight into a value, without the text of its step. */
export function usesOf(value: Quantity | Named): Uses {
  const origin = value.origin as AnyOrigin;
  switch (origin.kind) {
    case "given":
    case "assumed":
      return NOTHING;
    case "conversion":
      return { from: origin.from };
    case "formula":
    case "model":
      return origin.inputs;
    case "lookup":
      return typeof origin.asked === "string" ? NOTHING : { [origin.rule.rows.name]: origin.asked };
    case "choice": {
      const uses: Record<string, Quantity> = {};
      for (const { rule, value: side, limit } of origin.checks ?? []) {
        if (isQuantity(side)) uses[`${rule.id} value`] = side;
        if (isQuantity(limit)) uses[`${rule.id} limit`] = limit;
      }
      return uses;
    }
  }
}

/** The one step that made a value. */
export function stepOf(value: Quantity | Named): Step {
  const origin = value.origin as AnyOrigin;
  const base = { of: value, kind: origin.kind, result: exactText(value), grade: gradeOf(value) };
  const none = { id: null, equation: null, substituted: null, source: [], uses: {}, detail: null };
  switch (origin.kind) {
    case "given":
      return { ...base, ...none, symbol: "", about: "given", detail: origin.statedIn ?? null };
    case "assumed":
      return { ...base, ...none, symbol: "", about: origin.about, source: origin.source };
    case "conversion":
      return {
        ...base,
        ...none,
        symbol: "",
        about: "change of unit",
        substituted: exactText(origin.from),
        uses: usesOf(value),
      };
    case "formula":
      return { ...base, ...formulaStep(origin) };
    case "model": {
      const { rule, inputs } = origin;
      const { id, about, gives, source, method, digits } = rule;
      return {
        ...base,
        ...none,
        id,
        about,
        symbol: gives.symbol,
        source,
        uses: inputs,
        equation: method,
        detail: `${digits} digits kept`,
      };
    }
    case "lookup": {
      const { rule, rows, column, asked } = origin;
      const { id, about, gives, source, rowRule } = rule;
      const place = [
        `${rule.rows.name} ${rows.join(" to ")}`,
        ...Object.entries(column).map(([name, at]) => `${name} ${at}`),
      ];
      const taken =
        typeof asked === "string" || (rows.length === 1 && rows[0] === asked.text)
          ? ""
          : ` (asked ${exactText(asked)}, row rule: ${rowRule})`;
      const uses = usesOf(value);
      return { ...base, ...none, id, about, symbol: gives.symbol, source, uses, detail: `${place.join(", ")}${taken}` };
    }
    case "choice": {
      const { rule, rejected = [] } = origin;
      const { id, about, symbol, source } = rule;
      const why = rejected.map(
        ({ size, failed }) => `${exactText(size)} fails: ${failed.map(({ rule: { asks } }) => asks).join(" ")}`,
      );
      const uses = usesOf(value);
      return { ...base, ...none, id, about, symbol, source, uses, detail: why.length > 0 ? why.join("; ") : null };
    }
  }
}

const trees = /* @__PURE__ */ new WeakMap<FormulaDeclaration, Expression>();
const equations = /* @__PURE__ */ new WeakMap<FormulaDeclaration, string>();

function treeOf(rule: FormulaDeclaration): Expression {
  let tree = trees.get(rule);
  if (!tree) trees.set(rule, (tree = readExpression(rule.expression)));
  return tree;
}

/** The equation of a declared formula in its symbols. */
export function equationOf(rule: FormulaDeclaration): string {
  let equation = equations.get(rule);
  if (equation === undefined) {
    const symbol = (name: string): string => rule.takes[name]?.symbol ?? rule.constants?.[name]?.symbol ?? name;
    equation = `${rule.gives.symbol} = ${equationText(treeOf(rule), symbol)}`;
    equations.set(rule, equation);
  }
  return equation;
}

function formulaStep({ rule, inputs }: FormulaOrigin): Omit<Step, "of" | "kind" | "result" | "grade"> {
  const value = (name: string): string => {
    const constant = rule.constants?.[name];
    if (constant) return constant.unit === "1" ? constant.value : `${constant.value} ${constant.unit}`;
    const input = inputs[name]!;
    if (!("unit" in input)) return `{${input.map(exactText).join("; ")}}`;
    const text = exactText(input);
    return text.startsWith("−") ? `(${text})` : text;
  };
  const { id, about, gives, source, note } = rule;
  return {
    id,
    about,
    symbol: gives.symbol,
    equation: equationOf(rule),
    substituted: equationText(treeOf(rule), value),
    source,
    uses: inputs,
    detail: note ?? null,
  };
}

/** What went straight into a value. */
export function inputsOf(value: Quantity | Named): readonly (Quantity | Named)[] {
  return Object.values(usesOf(value)).flat();
}

/**
 * The whole working of a value, inputs before results, each step once.
 *
 * @example
 * ```ts
 * import { steps } from "pv-to-grid/formula";
 * import { openCircuitVoltageAt } from "pv-to-grid/module";
 * const cold = openCircuitVoltageAt({ openCircuitVoltage: "49.8 V", openCircuitVoltageCoefficient: "-0.27 %/K", cellTemperature: "-10 °C" });
 * steps(cold).at(-1)!.equation; // "U_OC = U_OC,STC · (1 + β_UOC · (T_c − T_STC))"
 * ```
 */
export function steps(value: Quantity | Named): readonly Step[] {
  const seen = new Set<Quantity | Named>();
  const list: Step[] = [];
  const visit = (node: Quantity | Named): void => {
    if (seen.has(node)) return;
    seen.add(node);
    for (const input of inputsOf(node)) visit(input);
    list.push(stepOf(node));
  };
  visit(value);
  return list;
}
