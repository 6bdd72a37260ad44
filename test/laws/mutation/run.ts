/**
 * Changes every rule in one step and sees whether a case, a guard or a test with values notices.
 *
 * `npx tsx test/laws/mutation/run.ts [--subject string] [--cells] [--all]` prints what nobody notices.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { conditions, formulas, subjectOf, tables } from "../../../src/catalogue/index.js";
import { lastDigitShifts, placeOf } from "../../../src/evidence/guards/grid.js";
import { withCell } from "../../../src/evidence/cells/noticed-cells.js";
import { allReferenceFiles, REFERENCE_DATA } from "../../harness/reference-data.js";
import { bundleJudges } from "./bundle.js";
import { conditionMutants, formulaMutants, type Mutant } from "./changes.js";
import { drawsThatDiffer } from "./difference.js";
import { askAll } from "./pool.js";
import type { Question } from "./worker.js";

const HANDS = 2;
const args = process.argv.slice(2);
const subject = args.includes("--subject") ? args[args.indexOf("--subject") + 1]! : null;
const isChosen = ({ id }: { readonly id: string }): boolean => subject === null || subjectOf(id) === subject;

interface Asked extends Mutant {
  readonly kind: Question["kind"];
}

const of = (kind: Question["kind"], mutants: readonly Mutant[]): readonly Asked[] =>
  mutants.map((mutant) => ({ ...mutant, kind }));

const asked: readonly Asked[] = [
  ...formulas()
    .filter(isChosen)
    .flatMap(({ declaration }) => of("formula", formulaMutants(declaration))),
  ...conditions()
    .filter(isChosen)
    .flatMap(({ declaration }) => of("condition", conditionMutants(declaration))),
  ...(args.includes("--cells")
    ? tables()
        .filter(isChosen)
        .flatMap((rule) => of("table", cellMutants(rule)))
    : []),
];

function cellMutants(rule: ReturnType<typeof tables>[number]): readonly Mutant[] {
  return rule.cells().flatMap(({ row, column, text }) =>
    lastDigitShifts(text).map((shifted) => ({
      rule: rule.id,
      change: `cell ${placeOf(row, column)}: ${shifted} in place of ${text}`,
      declaration: withCell(rule.declaration, { row, column }, shifted),
    })),
  );
}

// Beside the packages that the bundle leaves out, so that it finds them.
const folder = mkdtempSync(join(REFERENCE_DATA, "../node_modules/.rule-mutation-"));
try {
  const bundle = join(folder, "judges.mjs");
  await bundleJudges(bundle);
  const given = {
    cases: allReferenceFiles.cases.flatMap(({ content }) => content),
    guards: allReferenceFiles.guards.map(({ content }) => content),
  };
  const questions = asked.map(({ rule, kind, declaration }, number) => ({ number, rule, kind, declaration }));
  const answers = await askAll(bundle, given, questions, HANDS);
  const silent = answers.filter(({ noticedBy }) => noticedBy === null).map(({ number }) => asked[number]!);
  const lines = silent.map(({ kind, rule, change, declaration }) => {
    const differ = kind === "formula" ? drawsThatDiffer(rule, declaration) : null;
    return `${rule}  ${change}${differ === null ? "" : `  (${differ} of 300 draws differ)`}`;
  });
  console.log(lines.join("\n"));
  console.log(`${asked.length} changes, ${asked.length - silent.length} noticed, ${silent.length} not`);
} finally {
  rmSync(folder, { recursive: true });
}
