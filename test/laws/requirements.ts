import { type Expression, type FormulaDeclaration, namesIn, readExpression } from "../../src/formula/index.js";
import { isInputError } from "../../src/quantity/index.js";
import { byMathjs, scopeOf, textOf } from "./big-numbers.js";
import { bare, type Draw, drawInputs } from "./draws.js";
import { randomOf } from "./random.js";

const DRAWS = 40;
const ON_THE_LIMIT = 6;
const DIGITS = 25;
const STEP = "1e-6";

/** Inputs that lie anywhere, and inputs that lie on the limit of a requirement and beside it. */
export function drawsAround(declaration: FormulaDeclaration, requirements: readonly string[]): readonly Draw[] {
  const random = randomOf(`${declaration.id} requires`);
  const any = Array.from({ length: DRAWS }, () => drawInputs(declaration, random));
  const sides = requirements.flatMap((that) => comparisonsIn(readExpression(that)));
  const near = sides.flatMap(({ name, other }) =>
    Array.from({ length: ON_THE_LIMIT }, () => drawInputs(declaration, random)).flatMap((draw) =>
      onLimit(declaration, draw, name, other),
    ),
  );
  const crossed = requirements.flatMap((that) => acrossLimit(declaration, readExpression(that), any[0]!));
  return [...any, ...near, ...crossed, ...corners(declaration, requirements, any[0]!)];
}

const MOST_CORNERS = 6;

/** Inputs at the corners of the domain, and at zero where it lets zero in. */
function corners({ takes }: FormulaDeclaration, requirements: readonly string[], draw: Draw): readonly Draw[] {
  const names = requirements.flatMap((that) => namesIn(readExpression(that)));
  const tiny = Number(STEP);
  const ends = Object.entries(takes).flatMap(([name, take]) => {
    if (!names.includes(name)) return [];
    const low = take.from ?? (take.above === undefined ? (take.usual?.[0] ?? 0) : take.above + tiny);
    const high = take.to ?? (take.below === undefined ? (take.usual?.[1] ?? 0) : take.below - tiny);
    return [{ name, ends: low <= 0 && high >= 0 ? [low, high, 0] : [low, high] }];
  });
  return ends.slice(0, MOST_CORNERS).reduce<readonly Draw[]>(
    (found, { name, ends: values }) =>
      found.flatMap((one) => {
        const unit = unitText(one, name);
        // A list stands in a corner with all of its items.
        const set = (text: string): string | readonly string[] =>
          typeof one[name] === "string" ? text : (one[name] ?? []).map(() => text);
        return values.map((value) => ({ ...one, [name]: set(`${value}${unit}`) }));
      }),
    [draw],
  );
}

const HALVINGS = 50;
const FAR = 1e5;

/** Inputs on both sides of the limit of each comparison, found by halving the domain of one symbol after another. */
function acrossLimit(declaration: FormulaDeclaration, node: Expression, draw: Draw): readonly Draw[] {
  if (node.kind === "logic") return [node.left, node.right].flatMap((side) => acrossLimit(declaration, side, draw));
  if (node.kind !== "comparison") return [];
  const excess = `${textOf(node.left)} - ${textOf(node.right)}`;
  return Object.entries(declaration.takes).flatMap(([name, take]) => {
    if ("each" in take) return [];
    const unit = unitText(draw, name);
    const at = (value: number): Draw => ({ ...draw, [name]: `${value}${unit}` });
    const signAt = (value: number): number => {
      const found = byMathjs(excess, scopeOf(declaration, at(value)));
      return found === null || typeof found === "boolean" ? Number.NaN : Math.sign(found.toNumber());
    };
    const tiny = Number(STEP);
    let low = take.from ?? (take.above === undefined ? -FAR : take.above + tiny);
    let high = take.to ?? (take.below === undefined ? FAR : take.below - tiny);
    const start = signAt(low);
    if (Number.isNaN(start) || !(start * signAt(high) < 0)) return [];
    for (let step = 0; step < HALVINGS && high - low > tiny * Math.abs(low); step += 1) {
      const middle = Number(((low + high) / 2).toPrecision(15));
      if (signAt(middle) === start) low = middle;
      else high = middle;
    }
    return [at(low), at(high)];
  });
}

function unitText(draw: Draw, name: string): string {
  const drawn = draw[name] ?? "";
  const text = typeof drawn === "string" ? drawn : (drawn[0] ?? "");
  return text.slice(bare(text).length);
}

interface Side {
  readonly name: string;
  readonly other: Expression;
}

/** Each comparison of a requirement that has a bare name on one side. */
function comparisonsIn(node: Expression): readonly Side[] {
  if (node.kind === "logic") return [...comparisonsIn(node.left), ...comparisonsIn(node.right)];
  if (node.kind !== "comparison") return [];
  const sides = [
    [node.left, node.right],
    [node.right, node.left],
  ] as const;
  return sides.flatMap(([side, other]) => (side.kind === "name" ? [{ name: side.name, other }] : []));
}

function onLimit(declaration: FormulaDeclaration, draw: Draw, name: string, other: Expression): readonly Draw[] {
  const drawn = draw[name];
  const limit = byMathjs(textOf(other), scopeOf(declaration, draw));
  if (typeof drawn !== "string" || limit === null || typeof limit === "boolean") return [];
  const unit = drawn.slice(bare(drawn).length);
  const exact = limit.toSignificantDigits(DIGITS);
  return [exact, exact.plus(STEP), exact.minus(STEP)].map((value) => ({
    ...draw,
    [name]: `${value.toFixed()}${unit}`,
  }));
}

/** Whether a rule finds that its requirements hold; `null` where it refuses the inputs for another reason. */
export function accepts(rule: (inputs: Draw) => unknown, draw: Draw): boolean | null {
  try {
    rule(draw);
    return true;
  } catch (error) {
    if (!isInputError(error)) throw error;
    const codes = error.problems.map(({ code }) => code);
    if (codes.every((code) => code === "not-finite")) return true;
    return codes.includes("requirement") ? false : null;
  }
}
