import { plantJsonSchema } from "../../plant/index.js";

interface Schema {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly additionalProperties?: Schema | boolean;
  readonly anyOf?: readonly Schema[];
}

let known: Schema | undefined;

/** What a path of the description is about, in the words of its schema: `routes[2].breaker.rating` is “rated current”. */
export function pathWords(path: string): string | null {
  known ??= plantJsonSchema() as Schema;
  const steps = path.match(/[^.[\]]+/g) ?? [];
  const found = follow(known, steps);
  // Unit and domain follow the words; they are for who fills in the description.
  return found?.description === undefined ? null : found.description.replace(/ \[.*$/s, "").replace(/; .*$/s, "");
}

function follow(schema: Schema, [step, ...rest]: readonly string[]): Schema | null {
  if (step === undefined) return schema;
  const branches = [schema, ...(schema.anyOf ?? [])];
  for (const { properties, items, prefixItems, additionalProperties } of branches) {
    const next =
      (properties && Object.hasOwn(properties, step) ? properties[step] : undefined) ??
      (/^\d+$/.test(step) ? (prefixItems?.[Number(step)] ?? items) : undefined) ??
      (typeof additionalProperties === "object" ? additionalProperties : undefined);
    const found = next ? follow(next, rest) : null;
    if (found) return found;
  }
  return null;
}
