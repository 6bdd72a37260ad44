import { parseArgs } from "node:util";
import { basename, extname } from "node:path";
import { type Command, readArguments, badUse } from "../command.js";
import { EXIT, exitOf, type ExitCode } from "../exit.js";
import { readRecord } from "../record-input.js";
import { REPORT_OPTIONS, writeReports } from "../reports.js";

const NAME = "report";

const details = `Reads a sizing record, as "size --json" wrote it, and writes its reports without sizing again.
It takes the options of "size", except --without-working.

Example
  pv-to-grid report roof.record.json --html roof.html --open-working`;

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({ args: [...args], allowPositionals: true, options: REPORT_OPTIONS }),
  );
  const { "verdict-code": verdictCode, ...asked } = values;
  if (positionals.length > 1) throw badUse(NAME, "one record at a time");
  const [file = "-"] = positionals;
  const { record } = await readRecord(file);
  await writeReports(record, asked, file === "-" ? "plant" : basename(file, extname(file)));
  return verdictCode === "off" ? EXIT.allMet : exitOf(record);
}

export const reportCommand: Command = {
  name: NAME,
  use: "[FILE] [options]",
  about: "write the reports of a sizing record",
  details,
  run,
};
