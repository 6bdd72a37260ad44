/** Writes the JSON Schemas of the reference data from its formats; run by `npx tsx test/evidence/write-schemas.ts`. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { jsonSchemas } from "../../src/evidence/formats/schemas.js";
import { REFERENCE_DATA } from "../harness/reference-data.js";

for (const [name, schema] of Object.entries(jsonSchemas())) {
  writeFileSync(join(REFERENCE_DATA, "schemas", name), `${JSON.stringify(schema, null, 2)}\n`);
}
