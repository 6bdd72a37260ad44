import { parseArgs } from "node:util";
import { compare } from "../../plant/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode } from "../exit.js";
import { print } from "../files/print.js";
import { readRecord } from "../record-input.js";

const NAME = "compare";

const details = `Says what changed between two descriptions or records, and which checks flipped. Ends with 0 where both are read.

  --json                the comparison as JSON

Example
  pv-to-grid compare roof.json roof-with-longer-cable.json`;

function valueText(value: unknown): string {
  if (value === undefined) return "not there";
  return typeof value === "string" ? value : JSON.stringify(value);
}

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({ args: [...args], allowPositionals: true, options: { json: { type: "boolean" } } }),
  );
  const [before, after] = positionals;
  if (before === undefined || after === undefined || positionals.length > 2)
    throw badUse(NAME, "name two files, before and after");
  const [a, b] = [await readRecord(before), await readRecord(after)];
  const { changed, flipped } = compare(a.record, b.record);
  if (values.json === true) {
    await print(`${JSON.stringify({ changed, flipped }, null, 2)}\n`);
    return EXIT.allMet;
  }
  const own = changed.filter(({ path }) => !path.startsWith("plant.") && !path.startsWith("checks["));
  const described = changed.filter(({ path }) => path.startsWith("plant."));
  const lines = [
    `Flipped checks: ${flipped.length}`,
    ...flipped.map((flip) => `  ${flip.check}: ${flip.before ?? "not there"} -> ${flip.after ?? "not there"}`),
    `Changed in the description: ${described.length}`,
    ...described.map((change) => `  ${change.path}: ${valueText(change.before)} -> ${valueText(change.after)}`),
    `Changed in the result: ${own.length}`,
    ...own.map((change) => `  ${change.path}: ${valueText(change.before)} -> ${valueText(change.after)}`),
  ];
  await print(`${lines.join("\n")}\n`);
  return EXIT.allMet;
}

export const compareCommand: Command = {
  name: NAME,
  use: "BEFORE AFTER",
  about: "say what differs between two plants",
  details,
  run,
};
