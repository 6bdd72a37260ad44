import type { PlantRecord } from "../../plant/index.js";
import { type Cell, words } from "./cell.js";

type Path = readonly (string | number)[];

/** A path as the description's problems name it: `strings[0].modules`. */
function pathText(path: Path): string {
  return path.map((step, at) => (typeof step === "number" ? `[${step}]` : at === 0 ? step : `.${step}`)).join("");
}

/** The value at a path of the description, and the nearest `statedIn` on the way to it. */
function lookUp({ plant }: PlantRecord, path: Path): { readonly value: unknown; readonly statedIn: string | null } {
  let at: unknown = plant;
  let statedIn: string | null = null;
  for (const step of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return { value: undefined, statedIn };
    const own = (at as { statedIn?: unknown }).statedIn;
    if (typeof own === "string") statedIn = own;
    at = (at as Record<string | number, unknown>)[step];
  }
  return { value: at, statedIn };
}

function textOf(value: unknown): string | null {
  if (typeof value === "string") return value.replace(/^-(?=\d)/, "−");
  if (typeof value === "number") return String(value);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (Array.isArray(value) && value.every((item) => typeof item === "string" || typeof item === "number")) {
    return value.join(" to ");
  }
  return null;
}

/** A value as the description states it, with the path that states it; nothing where it is left out. */
export function fact(record: PlantRecord, ...path: Path): readonly Cell[] {
  const { value, statedIn } = lookUp(record, path);
  const text = textOf(value);
  return text === null ? [] : [{ kind: "fact", path: pathText(path), text, statedIn }];
}

/** A whole number that the library copied from the description. */
export function countedFact(count: number, path: string): Cell {
  return { kind: "fact", path, text: String(count), statedIn: null };
}

/** Whether a place of the description was left to the library's choice. */
export function wasChosen({ chosen }: PlantRecord, ...path: Path): boolean {
  return chosen.includes(pathText(path));
}

export interface Statement {
  readonly what: string;
  readonly statedIn: string;
}

/** Who stated what: every `statedIn` of the description, outermost first. */
export function statements({ plant }: PlantRecord): readonly Statement[] {
  const found: Statement[] = [];
  const walk = (value: unknown, path: Path): void => {
    if (typeof value !== "object" || value === null) return;
    const { statedIn, name } = value as { statedIn?: unknown; name?: unknown };
    if (typeof statedIn === "string") found.push({ what: typeof name === "string" ? name : pathText(path), statedIn });
    for (const [key, item] of Object.entries(value)) walk(item, [...path, Array.isArray(value) ? Number(key) : key]);
  };
  walk(plant, []);
  return found;
}

export { words };
