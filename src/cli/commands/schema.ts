import { parseArgs } from "node:util";
import { jsonSchemas } from "../../evidence/formats/schemas.js";
import { sheetJsonSchema } from "../../commissioning/index.js";
import { plantJsonSchema, recordJsonSchema } from "../../plant/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode } from "../exit.js";
import { print } from "../files/print.js";

const NAME = "schema";

/** Every published schema by a short name. */
export function schemas(): Readonly<Record<string, () => object>> {
  const evidence = Object.entries(jsonSchemas()).map(
    ([file, schema]) => [file.replace(".schema.json", ""), () => schema] as const,
  );
  return {
    plant: plantJsonSchema,
    record: recordJsonSchema,
    readings: sheetJsonSchema,
    ...Object.fromEntries(evidence),
  };
}

const details = `Prints a JSON Schema: plant (descriptions), record (sizing records), readings (measurement
sheets), and those of the reference data.

Example
  pv-to-grid schema plant > plant.schema.json`;

async function run(args: readonly string[]): Promise<ExitCode> {
  const { positionals } = readArguments(NAME, () =>
    parseArgs({ args: [...args], allowPositionals: true, options: {} }),
  );
  const known = schemas();
  const [name = ""] = positionals;
  const schema = Object.hasOwn(known, name) ? known[name] : undefined;
  if (!schema || positionals.length > 1) throw badUse(NAME, `say which: ${Object.keys(known).join(", ")}`);
  await print(`${JSON.stringify(schema(), null, 2)}\n`);
  return EXIT.allMet;
}

export const schemaCommand: Command = { name: NAME, use: "plant|record|…", about: "print a JSON Schema", details, run };
