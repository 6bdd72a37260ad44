import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { REFERENCE_DATA } from "./reference-data.js";

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  formats: { date: /^\d{4}-\d{2}-\d{2}$/ },
  allowUnionTypes: true,
});
const compiled = new Map<string, ValidateFunction>();

function validator(name: string): ValidateFunction {
  let known = compiled.get(name);
  if (!known) {
    known = ajv.compile(JSON.parse(readFileSync(join(REFERENCE_DATA, "schemas", name), "utf8")) as object);
    compiled.set(name, known);
  }
  return known;
}

/** What a published JSON Schema of the reference data finds wrong with a value, one line a fault. */
export function faultsOf(schema: string, value: unknown): readonly string[] {
  const validate = validator(schema);
  if (validate(value)) return [];
  return (validate.errors ?? []).map(
    ({ instancePath, message, params }) => `${instancePath}: ${message} ${JSON.stringify(params)}`,
  );
}
