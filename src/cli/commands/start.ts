import { parseArgs } from "node:util";
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { plantJsonSchema } from "../../plant/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode, Failure } from "../exit.js";
import { print } from "../files/print.js";
import { writeWhole } from "../files/write.js";
import { SCHEMA_FILE, startingPlant } from "../starting-plant.js";

const NAME = "start";

const details = `Writes a description to begin with, and beside it the schema that it names, so that an editor explains each key.
A file that is there already is left alone.

  FILE                  where to write it; nothing prints it

Example
  pv-to-grid start roof.json`;

async function run(args: readonly string[]): Promise<ExitCode> {
  const { positionals } = readArguments(NAME, () =>
    parseArgs({ args: [...args], allowPositionals: true, options: {} }),
  );
  if (positionals.length > 1) throw badUse(NAME, "name one file");
  const text = `${JSON.stringify(startingPlant, null, 2)}\n`;
  const [file = "-"] = positionals;
  if (file === "-") {
    await print(text);
    return EXIT.allMet;
  }
  if (existsSync(file)) throw new Failure(`${file}: is there already; name another file`, EXIT.badInput);
  const schema = join(dirname(file), SCHEMA_FILE);
  writeWhole(schema, `${JSON.stringify(plantJsonSchema(), null, 2)}\n`);
  writeWhole(file, text);
  await print(`Written: ${file}, ${schema}\nEdit it, then: pv-to-grid size ${file}\n`);
  return EXIT.allMet;
}

export const startCommand: Command = {
  name: NAME,
  use: "[FILE]",
  about: "write a description to begin with",
  details,
  run,
};
