import { parseArgs } from "node:util";
import { readSheetCsv, readSheetJson } from "../../commissioning/index.js";
import { judgeSheet, type JudgedSheet } from "../../plant/index.js";
import { judgedSheetHtml, judgedSheetText } from "../../report/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode, Failure } from "../exit.js";
import { print } from "../files/print.js";
import { parsed, readText } from "../files/read.js";
import { writeWhole } from "../files/write.js";
import { onInput, problemsText } from "../problems.js";
import { readRecord } from "../record-input.js";

const NAME = "verify";

const details = `Judges a filled-in measurement sheet against its plant: each reading within, outside, missing or open, with hints
where to look. Ends with 0 where all is within, 1 where something is outside, 2 where something is missing or open.

  SHEET                 the sheet, CSV or JSON, as "size --readings" wrote it and a person filled it in
  --of PLANT            its description or record
  --html FILE           the judged sheet as one HTML page (- prints a format instead of the text)
  --json FILE           the judged sheet, every digit

Example
  pv-to-grid size roof.json --readings roof.csv --quiet
  pv-to-grid verify roof.csv --of roof.json --html roof.judged.html`;

function exitOf({ outcome, unplaced }: JudgedSheet): ExitCode {
  if (outcome.outside > 0) return EXIT.somethingNotMet;
  return outcome.missing + outcome.open + unplaced.length > 0 ? EXIT.somethingOpen : EXIT.allMet;
}

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { of: { type: "string" }, html: { type: "string" }, json: { type: "string" } },
    }),
  );
  const [file] = positionals;
  const { of: plant, html, json } = values;
  if (file === undefined || plant === undefined || positionals.length > 1)
    throw badUse(NAME, "name one sheet, and its plant with --of FILE");
  if (file === "-" && plant === "-") throw badUse(NAME, "only one of the two can come from standard input");
  const { record } = await readRecord(plant);
  const { name, text } = await readText(file);
  const read = /^\s*\{/.test(text) ? readSheetJson(parsed(text, name)) : readSheetCsv(text);
  if (!read.ok) throw new Failure(problemsText(name, read.problems), EXIT.badInput);
  const judged = onInput(name, () => judgeSheet(record, read.sheet));
  const texts = [
    { place: html, text: judgedSheetHtml(judged) },
    { place: json, text: `${JSON.stringify(judged, null, 2)}\n` },
  ];
  if (texts.every(({ place }) => place === "-")) throw badUse(NAME, "only one format can go to standard output");
  for (const { place, text: content } of texts) if (place !== undefined && place !== "-") writeWhole(place, content);
  await print(texts.find(({ place }) => place === "-")?.text ?? judgedSheetText(judged));
  return exitOf(judged);
}

export const verifyCommand: Command = {
  name: NAME,
  use: "SHEET --of PLANT [options]",
  about: "judge a filled-in measurement sheet",
  details,
  run,
};
