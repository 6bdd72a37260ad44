#!/usr/bin/env node
import { VERSION } from "../plant/index.js";
import { isInputError, nearestName } from "../quantity/index.js";
import type { Command } from "./command.js";
import { auditCommand } from "./commands/audit.js";
import { compareCommand } from "./commands/compare.js";
import { explainCommand } from "./commands/explain.js";
import { listCommand } from "./commands/list.js";
import { reportCommand } from "./commands/report.js";
import { schemaCommand } from "./commands/schema.js";
import { sizeCommand } from "./commands/size.js";
import { startCommand } from "./commands/start.js";
import { streamCommand } from "./commands/stream.js";
import { verifyCommand } from "./commands/verify.js";
import { EXIT, type ExitCode, Failure } from "./exit.js";
import { endProgress, print, say } from "./files/print.js";
import { helpOf, overview } from "./help.js";
import { problemsText } from "./problems.js";

const COMMANDS: readonly Command[] = [
  startCommand,
  sizeCommand,
  reportCommand,
  streamCommand,
  verifyCommand,
  compareCommand,
  explainCommand,
  listCommand,
  schemaCommand,
  auditCommand,
];

const find = (name: string): Command | undefined => COMMANDS.find((command) => command.name === name);

async function run([name, ...args]: readonly string[]): Promise<ExitCode> {
  if (name === undefined || name === "--help" || name === "-h" || name === "help") {
    const asked = find(args[0] ?? "");
    await print(asked ? helpOf(asked) : overview(COMMANDS, VERSION));
    return EXIT.allMet;
  }
  if (name === "--version" || name === "-v") {
    await print(`${VERSION}\n`);
    return EXIT.allMet;
  }
  const command = find(name);
  if (!command) {
    const near = nearestName(
      name,
      COMMANDS.map((known) => known.name),
    );
    throw new Failure(
      `there is no command ${name.slice(0, 60)}${near === undefined ? "" : `; did you mean ${near}?`}\nTry: pv-to-grid help`,
      EXIT.badUse,
    );
  }
  if (args.includes("--help") || args.includes("-h")) {
    await print(helpOf(command));
    return EXIT.allMet;
  }
  return command.run(args);
}

/** What went wrong, for a person, and the code for a program. */
function explainFailure(error: unknown): { readonly message: string; readonly code: number } {
  if (error instanceof Failure) return error;
  if (isInputError(error)) return { message: problemsText("input", error.problems), code: EXIT.badInput };
  const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
  return { message: `pv-to-grid failed; please report this:\n${trace}`, code: EXIT.failedInside };
}

async function main(): Promise<void> {
  try {
    process.exitCode = await run(process.argv.slice(2));
  } catch (error) {
    endProgress();
    const { message, code } = explainFailure(error);
    say(message);
    process.exitCode = code;
  }
}

void main();
