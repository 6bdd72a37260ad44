import type { Rule } from "../../../../src/catalogue/index.js";
import { readExpression } from "../../../../src/formula/index.js";
import { bestGrade } from "../../../../src/source/index.js";
import { code, escaped, gradeMark, list, section, sentence } from "../html.js";
import type { PageLinks } from "../links.js";
import { displayEquation, equationMath } from "../math/equation.js";
import { inlineSymbol, symbolMath } from "../math/symbol.js";
import { cellsPart } from "./cells.js";
import { citation } from "./citations.js";
import { differencesPart, relatedPart } from "./differences.js";
import { errorsPart } from "./errors.js";
import { evidencePart } from "./evidence.js";
import { constantsPart, symbolsPart } from "./symbols.js";

type Of<K extends Rule["kind"]> = Extract<Rule, { readonly kind: K }>;

const UNITLESS = "a plain number";

/** What a reader sees before the example: what the rule is. */
export function beforeExample(rule: Rule, links: PageLinks): string {
  const held = `<p class="held">${code(rule.id)} · ${KINDS[rule.kind]} ${gradeMark(bestGrade(rule.declaration.source))}</p>`;
  return held + whatItIs(rule, links) + notePart(rule);
}

/** What follows the example: sources, evidence, differences, errors, relations. */
export function afterExample(rule: Rule, links: PageLinks): string {
  const sources = rule.declaration.source.map((one) => citation(one, links));
  return [
    section(
      "Source",
      sources.length > 0 ? list(sources) : "<p>None: the rule is a definition or is composed of others.</p>",
    ),
    evidencePart(rule.id, links),
    differencesPart(rule, links),
    errorsPart(rule),
    relatedPart(rule, links),
  ].join("");
}

const KINDS: Readonly<Record<Rule["kind"], string>> = {
  formula: "formula, in decimal",
  table: "table, as printed",
  series: "standard series",
  condition: "condition, gives a check",
  model: "method in double precision",
};

function whatItIs(rule: Rule, links: PageLinks): string {
  switch (rule.kind) {
    case "formula":
      return formulaPart(rule, links);
    case "condition":
      return conditionPart(rule);
    case "table":
      return cellsPart(rule, links);
    case "series": {
      const { sizes, unit, symbol } = rule.declaration;
      const each = sizes.trim().split(/\s+/);
      return section(
        "Sizes",
        `<p>${inlineSymbol(symbol)}${unit === "1" ? "" : ` in ${escaped(unit)}`}, smallest first: ${each.join("; ")}.</p>`,
      );
    }
    case "model": {
      const { method, digits, gives, takes } = rule.declaration;
      const text = `<p>${escaped(sentence(method))} ${digits} significant digits of the result can be trusted.</p>`;
      return section("Method", text) + resultPart(gives) + symbolsPart(takes, links);
    }
  }
}

function formulaPart({ declaration }: Of<"formula">, links: PageLinks): string {
  const { takes, constants = {}, gives, expression, requires = [] } = declaration;
  const symbolOf = (name: string): string => takes[name]?.symbol ?? constants[name]?.symbol ?? name;
  const right = equationMath(readExpression(expression), symbolOf);
  const holds = requires.map(
    ({ that, because }) => `<math>${equationMath(readExpression(that), symbolOf)}</math>, because ${escaped(because)}`,
  );
  return [
    section("Equation", displayEquation(symbolMath(gives.symbol), "=", right)),
    resultPart(gives),
    symbolsPart(takes, links),
    constantsPart(constants, links),
    section("Holds only if", list(holds)),
  ].join("");
}

function resultPart({ unit, symbol }: { readonly unit: string; readonly symbol: string }): string {
  return section("Result", `<p>${inlineSymbol(symbol)}, ${unit === "1" ? UNITLESS : `in ${escaped(unit)}`}.</p>`);
}

const FORCES = {
  requirement: "A requirement: the plant is not sound without it.",
  recommendation: "A recommendation: not met, it is not a fault by the cited document.",
  yield: "A matter of yield only.",
} as const;

function conditionPart({ declaration }: Of<"condition">): string {
  const { asks, force, value, relation, limit, worse = {} } = declaration;
  const side = (one: typeof value): string =>
    "unit" in one
      ? `${inlineSymbol(one.symbol)}: ${escaped(one.about)}${one.unit === "1" ? "" : `, in ${escaped(one.unit)}`}`
      : `a name: ${escaped(one.about)}`;
  const signs: Readonly<Record<string, string>> = { "<": "&lt;", ">": "&gt;" };
  const equation =
    "unit" in value && "unit" in limit
      ? displayEquation(symbolMath(value.symbol), signs[relation] ?? relation, symbolMath(limit.symbol))
      : `<p class="equation">${escaped(value.about)} <strong>${relation}</strong> ${escaped(limit.about)}</p>`;
  const directions = Object.entries(worse).map(([path, way]) => `${code(path)}: ${WAYS[way]}`);
  return [
    section("Condition", `<p><strong>${escaped(asks)}</strong> ${FORCES[force]}</p>${equation}`),
    section("Sides", list([`value ${side(value)}`, `limit ${side(limit)}`])),
    section("What makes it worse", list(directions)),
    section(
      "Result",
      `<p>A check: <em>met</em>, <em>not met</em> or <em>open</em>, with the share of the limit that is used. Called with ${code("missing")} it is open and says which input would decide it.</p>`,
    ),
  ].join("");
}

const WAYS = { up: "more of it", down: "less of it", either: "either way, by two effects" } as const;

function notePart({ declaration }: Rule): string {
  const note = "note" in declaration ? declaration.note : undefined;
  return note === undefined ? "" : section("Note", `<p>${escaped(sentence(note))}</p>`);
}
