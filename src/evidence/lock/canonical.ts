import { sha256 } from "./sha256.js";

/** JSON with its keys in order and without members that are null, so that equal facts have equal text. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value ?? null);
  const members = Object.entries(value)
    .filter(([, member]) => member !== null && member !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, member]) => `${JSON.stringify(key)}:${canonical(member)}`);
  return `{${members.join(",")}}`;
}

export const hashOf = (value: unknown): string => sha256(canonical(value));

/** The parts of a JSON Pointer (RFC 6901). */
function partsOf(pointer: string): readonly string[] {
  if (pointer === "") return [];
  return pointer
    .slice(1)
    .split("/")
    .map((part) => part.replace(/~1/g, "/").replace(/~0/g, "~"));
}

/** What stands at a JSON Pointer; null where nothing does. */
export function fieldAt(value: unknown, pointer: string): unknown {
  let at = value;
  for (const part of partsOf(pointer)) {
    if (typeof at !== "object" || at === null) return null;
    at = (at as Readonly<Record<string, unknown>>)[part];
  }
  return at ?? null;
}

/** A copy of a value with another field at a JSON Pointer. */
export function withField(value: unknown, pointer: string, field: unknown): unknown {
  const [head, ...rest] = partsOf(pointer);
  if (head === undefined) return field;
  const below = rest.map((part) => `/${part.replace(/~/g, "~0").replace(/\//g, "~1")}`).join("");
  if (Array.isArray(value))
    return value.map((item: unknown, index) => (String(index) === head ? withField(item, below, field) : item));
  const members = (value ?? {}) as Readonly<Record<string, unknown>>;
  return { ...members, [head]: withField(members[head] ?? null, below, field) };
}
