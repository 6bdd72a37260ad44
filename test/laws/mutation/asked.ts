import { conditions, formulas, subjectOf, tables } from "../../../src/catalogue/index.js";
import { withCell } from "../../../src/evidence/cells/noticed-cells.js";
import { lastDigitShifts, placeOf } from "../../../src/evidence/guards/grid.js";
import { conditionMutants, formulaMutants, type Mutant } from "./changes.js";
import type { Question } from "./worker.js";

/** A change and the kind of rule that it changes. */
export interface Asked extends Mutant {
  readonly kind: Question["kind"];
}

/** Every one-step change of the rules of a subject, or of all; of table cells only where they are asked for. */
export function everyChange(subject: string | null, withCells: boolean): readonly Asked[] {
  const isChosen = ({ id }: { readonly id: string }): boolean => subject === null || subjectOf(id) === subject;
  const of = (kind: Asked["kind"], mutants: readonly Mutant[]): readonly Asked[] =>
    mutants.map((mutant) => ({ ...mutant, kind }));
  const cells = withCells ? tables().filter(isChosen) : [];
  return [
    ...formulas()
      .filter(isChosen)
      .flatMap(({ declaration }) => of("formula", formulaMutants(declaration))),
    ...conditions()
      .filter(isChosen)
      .flatMap(({ declaration }) => of("condition", conditionMutants(declaration))),
    ...cells.flatMap((rule) => of("table", cellMutants(rule))),
  ];
}

function cellMutants(rule: ReturnType<typeof tables>[number]): readonly Mutant[] {
  return rule.cells().flatMap(({ row, column, text }) =>
    lastDigitShifts(text).map((shifted) => ({
      rule: rule.id,
      change: `cell ${placeOf(row, column)}: ${shifted} in place of ${text}`,
      declaration: withCell(rule.declaration, { row, column }, shifted),
    })),
  );
}
