import { parseArgs } from "node:util";
import { createReadStream } from "node:fs";
import { type PlantDescription, type PlantRecord, readPlant, sizePlant } from "../../plant/index.js";
import { isInputError, type Problem } from "../../quantity/index.js";
import { badUse, type Command, readArguments } from "../command.js";
import { EXIT, type ExitCode, exitOf, Failure, gravest } from "../exit.js";
import { endProgress, print, progress } from "../files/print.js";
import { decoded, parsed, STANDARD_INPUT } from "../files/read.js";
import { reasonOf } from "../files/system-error.js";

const NAME = "stream";

const details = `Sizes many plants: one description a line in (NDJSON), one answer a line out, in the same order.
An answer is { "line", "ok": true, "record" } or { "line", "ok": false, "problems" }; a bad line does not lose the others.
The exit code is that of the gravest line.

  FILE                  lines of descriptions; - or nothing reads standard input
  --outcome-only        { "line", "ok", "name", "outcome", "attention" } in place of the whole record
  --without-working     records without their working

Example
  cat plants.ndjson | pv-to-grid stream --outcome-only > outcomes.ndjson`;

const LINE_FEED = 10;
const LONGEST_LINE = 16 * 1024 * 1024;

interface Line {
  readonly number: number;
  /** `null` where the line is too long to be a description. */
  readonly bytes: Uint8Array | null;
}

/** Lines of a stream of bytes, one at a time, so that the memory holds one line and not the file. */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Line> {
  let number = 1;
  let parts: Uint8Array[] = [];
  let size = 0;
  const take = (): Line => {
    const bytes = size > LONGEST_LINE ? null : Buffer.concat(parts);
    parts = [];
    size = 0;
    return { number: number++, bytes };
  };
  for await (const chunk of chunks) {
    let from = 0;
    for (let end = chunk.indexOf(LINE_FEED); end >= 0; end = chunk.indexOf(LINE_FEED, from)) {
      parts.push(chunk.subarray(from, end));
      size += end - from;
      yield take();
      from = end + 1;
    }
    size += chunk.length - from;
    if (size <= LONGEST_LINE) parts.push(chunk.subarray(from));
    else parts = [];
  }
  if (size > 0) yield take();
}

function answer(
  { number, bytes }: Line,
  options: { readonly working: boolean; readonly outcomeOnly: boolean },
): { readonly text: string; readonly code: ExitCode } | null {
  const failed = (problems: readonly Problem[]): { readonly text: string; readonly code: ExitCode } => ({
    text: JSON.stringify({ line: number, ok: false, problems }),
    code: EXIT.badInput,
  });
  try {
    if (bytes === null) throw new Failure("the line is longer than a description can be", EXIT.badInput);
    const text = decoded(bytes, `line ${number}`);
    if (text.trim() === "") return null;
    const description = parsed(text, `line ${number}`);
    const read = readPlant(description);
    if (!read.ok) return failed(read.problems);
    const record = sizePlant(description as PlantDescription, { working: options.working });
    return {
      text: JSON.stringify({ line: number, ok: true, ...(options.outcomeOnly ? brief(record) : { record }) }),
      code: exitOf(record),
    };
  } catch (error) {
    if (isInputError(error)) return failed(error.problems);
    if (!(error instanceof Failure)) throw error;
    return failed([
      {
        path: "",
        code: "not-readable",
        message: error.message,
        expected: "one description a line, as JSON in UTF-8",
        received: "a line",
      },
    ]);
  }
}

function brief({ plant, outcome, checks }: PlantRecord): object {
  const attention = checks
    .filter(({ verdict }) => verdict !== "met")
    .map(({ id, verdict, remedy, missing }) => ({ id, verdict, remedy, missing }));
  return { name: plant.name, outcome, attention };
}

async function run(args: readonly string[]): Promise<ExitCode> {
  const { values, positionals } = readArguments(NAME, () =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        "outcome-only": { type: "boolean" },
        "without-working": { type: "boolean" },
      },
    }),
  );
  if (positionals.length > 1) throw badUse(NAME, "one stream at a time");
  const [file = "-"] = positionals;
  const outcomeOnly = values["outcome-only"] === true;
  const options = { outcomeOnly, working: !outcomeOnly && values["without-working"] !== true };
  const source = file === "-" ? process.stdin : createReadStream(file);
  let code: ExitCode = EXIT.allMet;
  try {
    for await (const line of linesOf(source as AsyncIterable<Buffer>)) {
      const given = answer(line, options);
      if (!given) continue;
      code = gravest([code, given.code]);
      await print(`${given.text}\n`);
      progress(`${line.number} lines`);
    }
  } catch (error) {
    if (error instanceof Failure) throw error;
    if (!(error instanceof Error && "code" in error)) throw error;
    throw new Failure(
      `${file === "-" ? STANDARD_INPUT : file}: cannot be read: ${reasonOf(error)}`,
      EXIT.failedToReadOrWrite,
    );
  } finally {
    endProgress();
  }
  return code;
}

export const streamCommand: Command = {
  name: NAME,
  use: "[FILE] [options]",
  about: "size many plants, one a line",
  details,
  run,
};
