import { VERSION } from "../../plant/index.js";
import { folderOfPackage } from "../audit-files.js";
import { auditCommand as runAudit } from "../audit.js";
import type { Command } from "../command.js";
import { EXIT, type ExitCode, Failure } from "../exit.js";
import { print } from "../files/print.js";

const details = `Compares the library with the published values that it ships, and says what counts and what is unproven.

  --json                the summary as JSON
  --cases FOLDER        runs an auditor's own case files instead

Example
  pv-to-grid audit --cases my-cases`;

const CODES: Readonly<Record<number, ExitCode>> = { 0: EXIT.allMet, 1: EXIT.somethingNotMet, 2: EXIT.badUse };

async function run(args: readonly string[]): Promise<ExitCode> {
  const texts: string[] = [];
  const code = runAudit(args, {
    referenceData: folderOfPackage(import.meta.url, "reference-data"),
    plants: folderOfPackage(import.meta.url, "shared/plants"),
    library: VERSION,
    print: (text) => texts.push(text),
    writeLock: () => {
      throw new Failure("audit: the lock belongs to the project; it is not written from the package", EXIT.badUse);
    },
  });
  await print(`${texts.join("\n")}\n`);
  return CODES[code] ?? EXIT.badInput;
}

export const auditCommand: Command = {
  name: "audit",
  use: "[options]",
  about: "compare the library with its published values",
  details,
  run,
};
