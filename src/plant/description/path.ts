import type * as z from "zod/mini";

/** Steps from the root of a description to a value. */
export type Path = readonly (string | number)[];

/** A path as people write it: `inverters[0].startVoltage`. */
export function pathText(path: Path): string {
  return path
    .map((step, index) => (typeof step === "number" ? `[${step}]` : index === 0 ? step : `.${step}`))
    .join("")
    .slice(0, 300);
}

/** The value at a path of anything; own properties only. */
export function valueAt(value: unknown, path: Path): unknown {
  let at = value;
  for (const step of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
}

interface Inside {
  readonly type: string;
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly innerType?: z.ZodMiniType;
  readonly element?: z.ZodMiniType;
  readonly valueType?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  readonly items?: readonly z.ZodMiniType[];
}

export function insideOf(schema: z.ZodMiniType): Inside {
  return (schema as unknown as { readonly _zod: { readonly def: Inside } })._zod.def;
}

/** The keys that an object at a path may have. */
export function keysAt(schema: z.ZodMiniType, path: Path): string[] {
  const inside = insideOf(schema);
  if (inside.innerType) return keysAt(inside.innerType, path);
  if (inside.options) return inside.options.flatMap((option) => keysAt(option, path));
  const [step, ...rest] = path;
  if (step === undefined) return Object.keys(inside.shape ?? {});
  if (inside.element) return keysAt(inside.element, rest);
  if (inside.valueType) return keysAt(inside.valueType, rest);
  if (inside.items) return inside.items[Number(step)] ? keysAt(inside.items[Number(step)]!, rest) : [];
  const next = inside.shape && Object.hasOwn(inside.shape, step) ? inside.shape[step] : undefined;
  return next ? keysAt(next, rest) : [];
}

/** Every path that a description may have, lists as `[]` and records as `{}`; for docs and tests. */
export function everyPath(schema: z.ZodMiniType, prefix = ""): string[] {
  const inside = insideOf(schema);
  if (inside.innerType) return everyPath(inside.innerType, prefix);
  if (inside.shape) {
    return Object.entries(inside.shape).flatMap(([key, child]) =>
      everyPath(child, prefix === "" ? key : `${prefix}.${key}`),
    );
  }
  if (inside.element) return everyPath(inside.element, `${prefix}[]`);
  if (inside.valueType) return everyPath(inside.valueType, `${prefix}{}`);
  if (inside.options) return [...new Set([prefix, ...inside.options.flatMap((option) => everyPath(option, prefix))])];
  return [prefix];
}
