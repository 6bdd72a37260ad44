import type { FormulaDeclaration, ListSymbol, ScalarSymbol } from "../../src/formula/index.js";

type Take = ScalarSymbol | ListSymbol;
type Random = () => number;

/** Inputs of one call: text with its unit, or a list of such texts. */
export type Draw = Readonly<Record<string, string | readonly string[]>>;

const LONGEST_LIST = 4;
const DIGITS = 6;
const MANY_DIGITS = 13;
const WIDE = 1000;
const TINY = 1e-6;

const unitOf = (take: Take): string => ("each" in take ? take.each : take.unit);

/** Lowest and highest value that is drawn: the usual range, else what the domain leaves of a wide one. */
function rangeOf({ usual, above, from, below, to }: Take): readonly [number, number] {
  if (usual) return usual;
  const low = from ?? above;
  const high = to ?? below;
  if (low !== undefined && high !== undefined) return [low, high];
  if (low !== undefined) return [low, low + WIDE];
  if (high !== undefined) return [high - WIDE, high];
  return [-WIDE, WIDE];
}

/** Values at the edges: of the domain, as near as it lets one, of the usual range, and at constants of the same unit. */
function edgesOf(take: Take, { constants = {} }: FormulaDeclaration): readonly number[] {
  const { above, from, below, to, usual = [] } = take;
  const near = (edge: number, side: 1 | -1): number => edge + side * TINY * Math.max(1, Math.abs(edge));
  // As near as a thousandth of what is drawn: nearer, exponentials of quotients leave every number range.
  const [low, high] = rangeOf(take);
  const within = (edge: number, side: 1 | -1): number => edge + ((side > 0 ? high : low) - edge) / WIDE;
  const limits = Object.values(constants)
    .filter(({ unit }) => unit === unitOf(take))
    .map(({ value }) => Number(value));
  const around = limits.flatMap((limit) => [limit, near(limit, 1), near(limit, -1)]);
  const edges = [...usual, ...around];
  if (from !== undefined) edges.push(from);
  if (to !== undefined) edges.push(to);
  if (above !== undefined) edges.push(within(above, 1));
  if (below !== undefined) edges.push(within(below, -1));
  return edges.filter((value) => isInside(value, take));
}

function isInside(value: number, { above, from, below, to }: Take): boolean {
  return (
    (above === undefined || value > above) &&
    (from === undefined || value >= from) &&
    (below === undefined || value < below) &&
    (to === undefined || value <= to)
  );
}

function plain(value: number, digits: number): string {
  const text = Number(value.toPrecision(digits));
  return Math.abs(text) >= 1e21 || (text !== 0 && Math.abs(text) < 1e-7) ? text.toExponential() : String(text);
}

const EDGE_SHARE = 0.25;
const NEIGHBOUR_SHARE = 0.15;
const LOG_SHARE = 0.3;
const SHORT_SHARE = 0.5;
// Numbers without a unit often count things.
const WHOLE_SHARE = 0.25;
const LONG_LIST_SHARE = 0.3;
const LONGEST_NAMED_LIST = 50;

function drawOne(take: Take, declaration: FormulaDeclaration, drawn: readonly number[], random: Random): string {
  // Symbols of one unit are often compared: some draws repeat a value that another symbol has, or lie beside it.
  if (drawn.length > 0 && random() < NEIGHBOUR_SHARE) {
    const other = drawn[Math.floor(random() * drawn.length)]! * (1 + (Math.floor(random() * 3) - 1) * TINY);
    if (isInside(other, take)) return plain(other, MANY_DIGITS);
  }
  const edges = edgesOf(take, declaration);
  if (edges.length > 0 && random() < EDGE_SHARE) return String(edges[Math.floor(random() * edges.length)]);
  const [low, high] = rangeOf(take);
  const byDecade = low >= 0 && high > 0 && random() < LOG_SHARE;
  const start = Math.max(low, high / WIDE);
  const value = byDecade ? start * (high / start) ** random() : low + (high - low) * random();
  if (unitOf(take) === "1" && random() < WHOLE_SHARE && isInside(Math.round(value), take))
    return String(Math.round(value));
  const digits = random() < SHORT_SHARE ? DIGITS : MANY_DIGITS;
  const text = plain(value, digits);
  return isInside(Number(text), take) ? text : drawOne(take, declaration, drawn, random);
}

/** Lengths of lists: a few, and sometimes a number that the rule names as a constant. */
function lengthOf({ constants = {} }: FormulaDeclaration, random: Random): number {
  const named = Object.values(constants)
    .map(({ value }) => Number(value))
    .filter((value) => Number.isInteger(value) && value > 0 && value <= LONGEST_NAMED_LIST);
  if (named.length > 0 && random() < LONG_LIST_SHARE) return named[Math.floor(random() * named.length)]!;
  return 1 + Math.floor(random() * LONGEST_LIST);
}

/** Random inputs of a formula: most from the usual ranges, the rest at edges and beside each other. */
export function drawInputs(declaration: FormulaDeclaration, random: Random): Draw {
  const drawn = new Map<string, number[]>();
  const draw: [string, string | readonly string[]][] = Object.entries(declaration.takes).map(([key, take]) => {
    const unit = unitOf(take);
    const others = drawn.get(unit) ?? [];
    drawn.set(unit, others);
    const one = (): string => {
      const text = drawOne(take, declaration, others, random);
      others.push(Number(text));
      return unit === "1" ? text : `${text} ${unit}`;
    };
    if (!("each" in take)) return [key, one()];
    return [key, Array.from({ length: lengthOf(declaration, random) }, () => one())];
  });
  return Object.fromEntries(draw);
}

/** The bare number of a drawn text. */
export const bare = (text: string): string => text.split(" ")[0]!;
