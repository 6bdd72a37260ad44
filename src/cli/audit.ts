import { audit, type Evidence, type Uses, usesIn } from "../evidence/index.js";
import { type PlantDescription, sizePlant } from "../plant/index.js";
import { casesSchema } from "../evidence/formats/case.js";
import { extendedLock, lockedItems } from "../evidence/lock/lock.js";
import { readFolder, readReferenceFiles } from "./audit-files.js";
import { summaryText } from "./audit-text.js";

/** Where an audit finds its files and writes its text. */
export interface AuditPlace {
  readonly referenceData: string;
  readonly library: string;
  readonly print: (text: string) => void;
  readonly writeLock: (text: string) => void;
  /** Folder of plant descriptions whose sizings show which checks lean on which rules. */
  readonly plants?: string;
}

/** Which checks lean on which rules in the plants of a folder. */
export function usesOfPlants(folder: string | undefined): Uses {
  if (folder === undefined) return new Map();
  return usesIn(readFolder(folder).map(({ content }) => sizePlant(content as PlantDescription)));
}

/** The evidence of a folder of reference data. */
export function evidenceOf(folder: string): Evidence {
  const { cases, guards, errata, changes, lock } = readReferenceFiles(folder);
  return {
    cases: cases.flatMap(({ content }) => content),
    guards: guards.map(({ content }) => content),
    errata: errata.flatMap(({ content }) => content),
    changes,
    lock,
  };
}

/** An auditor's own cases: every JSON file of a folder, in the published format. */
function ownCases(folder: string): { readonly evidence: Evidence; readonly faults: readonly string[] } {
  const faults: string[] = [];
  const cases = readFolder(folder).flatMap(({ path, content }) => {
    const read = casesSchema.safeParse(content);
    if (read.success) return read.data;
    faults.push(...read.error.issues.map(({ path: at, message }) => `${path} ${at.join("/")}: ${message}`));
    return [];
  });
  return { evidence: { cases, guards: [], errata: [], changes: [], lock: null }, faults };
}

/**
 * Runs the audit: `--json` prints the summary as JSON, `--cases DIR` runs the case files of a folder, `--lock` adds what is new
 * to the lock. Gives the exit code: 1 for a deviation without erratum, an unknown rule, a case that throws, an empty folder.
 */
export function auditCommand(
  args: readonly string[],
  { referenceData, library, print, writeLock, plants }: AuditPlace,
): number {
  const unknown = args.filter(
    (arg, at) => !["--json", "--cases", "--lock"].includes(arg) && args[at - 1] !== "--cases",
  );
  const own = args.indexOf("--cases");
  const folder = own < 0 ? undefined : args[own + 1];
  if (unknown.length > 0 || (own >= 0 && folder === undefined)) {
    print(
      `${unknown.length > 0 ? `unknown: ${unknown.join(" ")}` : "--cases needs a folder"}\nuse: [--json] [--cases DIR] [--lock]`,
    );
    return 2;
  }
  const { evidence, faults: formatFaults } =
    folder === undefined ? { evidence: evidenceOf(referenceData), faults: [] } : ownCases(folder);
  const result = audit(evidence, { library, uses: usesOfPlants(plants) });
  const empty = evidence.cases.length === 0 ? [`${folder ?? "reference-data"}: there is no case in this folder`] : [];
  const faults = [...empty, ...formatFaults, ...result.faults];
  if (args.includes("--lock") && folder === undefined) {
    writeLock(`${JSON.stringify(extendedLock(lockedItems(evidence), evidence.lock), null, 2)}\n`);
  }
  print(args.includes("--json") ? JSON.stringify(result.summary, null, 2) : summaryText(result));
  if (faults.length > 0 && !args.includes("--json"))
    print(`\nFaults\n${faults.map((fault) => `  ${fault}`).join("\n")}`);
  return faults.length > 0 ? 1 : 0;
}
