/** Writes the schemas that the package publishes, from the validation that the library itself uses. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { sheetJsonSchema } from "../src/commissioning/index.js";
import { plantJsonSchema, recordJsonSchema } from "../src/plant/index.js";

const schemas = { plant: plantJsonSchema(), record: recordJsonSchema(), readings: sheetJsonSchema() };
for (const [name, schema] of Object.entries(schemas)) {
  const file = new URL(`../shared/schemas/${name}.schema.json`, import.meta.url);
  const text = `${JSON.stringify(schema, null, 2)}\n`;
  if (!existsSync(file) || readFileSync(file, "utf8") !== text) writeFileSync(file, text);
}
