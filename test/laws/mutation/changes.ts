import {
  childrenOf,
  type ConditionDeclaration,
  type Expression,
  type FormulaDeclaration,
  readExpression,
  type Relation,
} from "../../../src/formula/index.js";
import { lastDigitShifts } from "../../../src/evidence/guards/grid.js";
import { textOf } from "../big-numbers.js";

/** A rule with one step changed. */
export interface Mutant {
  readonly rule: string;
  /** The change in words. */
  readonly change: string;
  readonly declaration: object;
}

const OPERATORS: Readonly<Record<string, readonly string[]>> = {
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "^": ["*"],
  "<": ["<=", ">"],
  "<=": ["<", ">="],
  ">": [">=", "<"],
  ">=": [">", "<="],
  "==": ["!="],
  "!=": ["=="],
  and: ["or"],
  or: ["and"],
};

const TWINS: Readonly<Record<string, string>> = {
  min: "max",
  max: "min",
  floor: "ceil",
  ceil: "floor",
  sin: "cos",
  cos: "sin",
};

/** Every tree that differs from a node, itself, in one step. */
function changesAt(node: Expression): readonly Expression[] {
  switch (node.kind) {
    case "number":
      return [{ kind: "number", text: String(Number(node.text) + 1) }];
    case "name":
      return [];
    case "negative":
      return [node.of];
    case "choice":
      return [node.then, node.otherwise];
    case "call": {
      const dropped =
        node.of.length > 1
          ? node.of.map((_, at) => ({ ...node, of: node.of.filter((__, other) => other !== at) }))
          : [];
      const plain = node.of.length === 1 && !isListCall(node) ? [node.of[0]!] : [];
      const single = dropped.map((call) => (call.of.length === 1 ? call.of[0]! : call));
      const twin = TWINS[node.name];
      return [...single, ...plain, ...(twin === undefined ? [] : [{ ...node, name: twin as typeof node.name }])];
    }
    case "binary":
    case "comparison":
    case "logic": {
      const other = OPERATORS[node.operator]!.map((operator) => ({ ...node, operator }) as Expression);
      return node.kind === "comparison" ? other : [...other, node.left, node.right];
    }
  }
}

const isListCall = ({ name, of }: Expression & { readonly kind: "call" }): boolean =>
  ["sum", "prod", "count"].includes(name) || ((name === "min" || name === "max") && of.length === 1);

/** Every tree that differs from a tree in one step. */
export function changedTrees(tree: Expression): readonly Expression[] {
  const below = childrenOf(tree).flatMap((child, at) =>
    changedTrees(child).map((changed) => withChild(tree, at, changed)),
  );
  return [...changesAt(tree), ...below];
}

function withChild(node: Expression, at: number, child: Expression): Expression {
  switch (node.kind) {
    case "number":
    case "name":
      return node;
    case "negative":
      return { ...node, of: child };
    case "choice":
      return { ...node, [(["test", "then", "otherwise"] as const)[at]!]: child };
    case "call":
      return { ...node, of: node.of.map((old, index) => (index === at ? child : old)) };
    default:
      return { ...node, [at === 0 ? "left" : "right"]: child };
  }
}

/** Every one-step change of a formula: expression, requirements, constants by one last digit, bounds. */
export function formulaMutants(declaration: FormulaDeclaration): readonly Mutant[] {
  const { id, expression, requires = [], constants = {}, takes } = declaration;
  const mutant = (change: string, altered: Partial<FormulaDeclaration>): Mutant => ({
    rule: id,
    change,
    declaration: { ...declaration, ...altered },
  });
  const texts = changedTrees(readExpression(expression)).map(textOf);
  const trees = [...new Set(texts)].map((text) => mutant(`expression: ${text}`, { expression: text }));
  const requirements = requires.flatMap((requirement, at) => [
    mutant(`without the requirement ${requirement.that}`, { requires: requires.filter((_, other) => other !== at) }),
    ...changedTrees(readExpression(requirement.that))
      .filter((tree) => tree.kind === "comparison" || tree.kind === "logic")
      .map((tree) =>
        mutant(`requirement: ${textOf(tree)}`, {
          requires: requires.map((old, other) => (other === at ? { ...old, that: textOf(tree) } : old)),
        }),
      ),
  ]);
  const digits = Object.entries(constants).flatMap(([key, constant]) =>
    lastDigitShifts(constant.value).map((value) =>
      mutant(`${key}: ${value} in place of ${constant.value}`, {
        constants: { ...constants, [key]: { ...constant, value } },
      }),
    ),
  );
  const bounds = Object.entries(takes).flatMap(([key, take]) =>
    changedBounds(take).map(({ change, bound }) =>
      mutant(`${key}: ${change}`, { takes: { ...takes, [key]: { ...take, ...bound } as typeof take } }),
    ),
  );
  return [...trees, ...requirements, ...digits, ...bounds];
}

type Bounds = Partial<Record<"above" | "from" | "below" | "to", number | undefined>>;

const OTHER_SIDE = { above: "from", from: "above", below: "to", to: "below" } as const;

// A bound moves by one last digit both ways, and lets its own value in or out.
function changedBounds(take: Bounds): readonly { readonly change: string; readonly bound: Bounds }[] {
  return (Object.keys(OTHER_SIDE) as (keyof typeof OTHER_SIDE)[]).flatMap((key) => {
    const value = take[key];
    if (value === undefined) return [];
    const other = OTHER_SIDE[key];
    const shifted = lastDigitShifts(String(value)).map((text) => ({
      change: `${key} ${text} in place of ${value}`,
      bound: { [key]: Number(text) },
    }));
    return [
      ...shifted,
      { change: `${other} ${value} in place of ${key}`, bound: { [key]: undefined, [other]: value } },
    ];
  });
}

const RELATIONS: Readonly<Partial<Record<Relation, readonly Relation[]>>> = {
  "<": ["≤", ">"],
  "≤": ["<", "≥"],
  ">": ["≥", "<"],
  "≥": [">", "≤"],
  "=": ["≤", "≥"],
};

/** A condition with another relation, or with another force. */
export function conditionMutants(declaration: ConditionDeclaration): readonly Mutant[] {
  return (RELATIONS[declaration.relation] ?? []).map((relation) => ({
    rule: declaration.id,
    change: `relation ${relation} in place of ${declaration.relation}`,
    declaration: { ...declaration, relation },
  }));
}
