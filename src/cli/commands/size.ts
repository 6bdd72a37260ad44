import { parseArgs } from "node:util";
import { basename, extname } from "node:path";
import { type PlantDescription, readPlant, sizePlant } from "../../plant/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode, exitOf, Failure, gravest } from "../exit.js";
import { endProgress, progress, say } from "../files/print.js";
import { parsed, readText } from "../files/read.js";
import { onInput, problemsText } from "../problems.js";
import { FORMATS, REPORT_OPTIONS, type ReportArguments, writeReports } from "../reports.js";

const NAME = "size";

const details = `Reads one plant description, or several, and sizes them. Without an option the report is printed as text.

  FILE                  a description; - or nothing reads standard input
  --html FILE           the report as one HTML page (- prints a format instead of the text)
  --json FILE           the sizing record, every digit
  --text FILE           the report as text
  --markdown FILE       the report as Markdown
  --checks FILE         every check as CSV
  --material FILE       the material list as CSV
  --sheet FILE          the commissioning sheet as one HTML page
  --readings FILE       the measurement sheet to fill in, as CSV
  --figures FOLDER      every figure as an SVG file
  --into FOLDER         all formats, named after the description; needed for several
  --date TEXT           a date to print; the report never asks the clock
  --by TEXT             who presents the report
  --allowance SHARE     allowance on cable lengths, such as "5 %"; 10 % where left out
  --open-working        unfolds every working, for print
  --without-working     leaves the working out of the record and the reports
  --brief               prints the foreman's summary only
  --quiet               prints nothing where all goes to files
  --verdict-code off    ends with 0 whatever the verdict

Examples
  pv-to-grid size roof.json --html roof.html
  pv-to-grid size < roof.json --json - | jq .outcome
  pv-to-grid size north.json south.json --into reports --date 2026-05-04`;

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...REPORT_OPTIONS,
        "without-working": { type: "boolean" },
      },
    }),
  );
  const { "verdict-code": verdictCode, ...asked } = values;
  if (verdictCode !== undefined && verdictCode !== "off")
    throw badUse(NAME, "--verdict-code takes off and nothing else");
  const files = positionals.length === 0 ? ["-"] : positionals;
  if (files.length > 1) checkSeveral(files, asked);
  const codes: ExitCode[] = [];
  for (const [index, file] of files.entries()) {
    if (files.length > 1) progress(`${index + 1} of ${files.length}: ${file}`);
    try {
      codes.push(await sizeOne(file, asked, values["without-working"] !== true));
    } catch (error) {
      // One bad description does not lose the others.
      if (files.length === 1 || !(error instanceof Failure) || error.code !== EXIT.badInput) throw error;
      endProgress();
      say(error.message);
      codes.push(error.code);
    }
  }
  endProgress();
  const code = gravest(codes);
  const isVerdict = code === EXIT.somethingNotMet || code === EXIT.somethingOpen;
  return verdictCode === "off" && isVerdict ? EXIT.allMet : code;
}

function checkSeveral(files: readonly string[], asked: ReportArguments): void {
  const single = (Object.keys(FORMATS) as (keyof typeof FORMATS)[]).find((format) => asked[format] !== undefined);
  if (single !== undefined)
    throw badUse(NAME, `--${single} names one file; use --into FOLDER for several descriptions`);
  const stems = files.map(stemOf);
  const twice = stems.find((stem, at) => stems.indexOf(stem) !== at);
  if (asked.into !== undefined && twice !== undefined)
    throw badUse(NAME, `two descriptions would both be written as ${twice}`);
}

const stemOf = (file: string): string => (file === "-" ? "plant" : basename(file, extname(file)));

async function sizeOne(file: string, asked: ReportArguments, working: boolean): Promise<ExitCode> {
  const { name, text } = await readText(file);
  const description = parsed(text, name);
  const read = readPlant(description);
  if (!read.ok) throw new Failure(problemsText(name, read.problems), EXIT.badInput);
  const record = onInput(name, () => sizePlant(description as PlantDescription, { working }));
  await writeReports(record, asked, stemOf(file));
  return exitOf(record);
}

export const sizeCommand: Command = {
  name: NAME,
  use: "[FILE …] [options]",
  about: "size a plant from its description, and write the reports",
  details,
  run,
};
