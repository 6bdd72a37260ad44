/**
 * Changes every rule in one step and sees whether a case, a guard, a test with values or a law notices.
 *
 * `npm run mutation:rules -- [--subject string] [--cells] [--sample 500] [--report]` prints what nobody notices; a sample is drawn by the seed of the
 * run; `--report` writes the table.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { FormulaDeclaration } from "../../../src/formula/index.js";
import { seed } from "../../harness/random.js";
import { allReferenceFiles, REFERENCE_DATA } from "../../harness/reference-data.js";
import { incoherence, NothingToCompare } from "../coherence.js";
import { NoInputs } from "../lawful-draw.js";
import { type Asked, everyChange } from "./asked.js";
import { bundleJudges } from "./bundle.js";
import { randomOf } from "../random.js";
import { drawsThatDiffer } from "./difference.js";
import listedChanges from "./listed.json" with { type: "json" };
import { askAll } from "./pool.js";
import { type Found, type Listed, MOST_LISTED, reportPage } from "./report.js";

const HANDS = 2;
const args = process.argv.slice(2);
const option = (name: string): string | null => (args.includes(name) ? (args[args.indexOf(name) + 1] ?? "") : null);
const subject = option("--subject");
const sample = Number(option("--sample") ?? Infinity);
const root = join(REFERENCE_DATA, "..");
const listed = listedChanges as readonly Listed[];

/** A change that leaves every number as it is may still spoil the units. */
function spoilsUnits({ kind, declaration }: Asked): boolean {
  if (kind !== "formula") return false;
  try {
    return incoherence(declaration as FormulaDeclaration) !== null;
  } catch (error) {
    // Where nothing can be compared, nothing is noticed; anything else is a clash of units.
    return !(error instanceof NothingToCompare || error instanceof NoInputs);
  }
}

async function judgeAll(asked: readonly Asked[]): Promise<readonly Found[]> {
  // Beside the packages that the bundle leaves out, so that it finds them.
  const folder = mkdtempSync(join(root, "node_modules/.rule-mutation-"));
  try {
    const bundle = join(folder, "judges.mjs");
    await bundleJudges(bundle, subject);
    const given = {
      cases: allReferenceFiles.cases.flatMap(({ content }) => content),
      guards: allReferenceFiles.guards.map(({ content }) => content),
    };
    const questions = asked.map(({ rule, kind, declaration }, number) => ({ number, rule, kind, declaration }));
    const answers = await askAll(bundle, given, questions, HANDS);
    return answers.map(({ number, noticedBy }) => {
      const one = asked[number]!;
      const reason = listed.find(({ rule, change }) => rule === one.rule && change === one.change)?.reason ?? null;
      return { ...one, noticedBy: noticedBy ?? (spoilsUnits(one) ? "units" : null), listed: reason };
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** So many of the changes, drawn by the seed. */
function drawn(all: readonly Asked[]): readonly Asked[] {
  const random = randomOf("rule mutation");
  const order = all.map((one) => ({ one, place: random() })).sort((a, b) => a.place - b.place);
  return order.slice(0, sample).map(({ one }) => one);
}

const found = await judgeAll(drawn(everyChange(subject, args.includes("--cells"))));
const silent = found.filter(({ noticedBy, listed: reason }) => noticedBy === null && reason === null);
for (const { kind, rule, change, declaration } of silent) {
  const differ = kind === "formula" ? drawsThatDiffer(rule, declaration) : null;
  console.log(`${rule}  ${change}${differ === null ? "" : `  (${differ} of 300 draws differ)`}`);
}
if (Number.isFinite(sample)) console.log(`a sample by seed ${seed}`);
const stale = found.filter(({ noticedBy, listed: reason }) => noticedBy !== null && reason !== null);
for (const { rule, change, noticedBy } of stale)
  console.log(`${rule}  ${change}: is listed, but noticed by ${noticedBy}`);
const used = found.filter(({ noticedBy, listed: reason }) => noticedBy === null && reason !== null).length;
console.log(
  `${found.length} changes, ${found.length - silent.length - used} noticed, ${used} listed, ${silent.length} not`,
);
if (args.includes("--report")) {
  const options = args.join(" ");
  writeFileSync(join(root, "docs/audit/rule-mutation.md"), reportPage(found, options));
}
process.exitCode = silent.length > 0 || stale.length > 0 || used > MOST_LISTED * found.length ? 1 : 0;
