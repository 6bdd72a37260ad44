import { type Catalogue, catalogue } from "../../catalogue/catalogue.js";
import { tables } from "../../catalogue/lists.js";
import type { Grade } from "../../source/grade.js";
import type { JudgedCase } from "../cases/counting.js";
import { placeOf } from "../guards/grid.js";
import type { GuardOutcome } from "../guards/run-guard.js";
import { type CellGuards, guardsByCell } from "./guarding.js";
import { cellsNoticedBy } from "./noticed-cells.js";

/** What holds a shipped cell apart from its own transcription. */
export interface CellState {
  readonly table: string;
  readonly place: string;
  readonly text: string;
  readonly grade: Grade | null;
  /** The strongest guard: another copy, the law, a counting case that notices it; or none. */
  readonly guardedBy: "copy" | "formula" | "example" | "none";
  /** Whether one last digit more or less would be noticed by a guard or a counting case. */
  readonly shiftNoticed: boolean;
}

/** The state of every shipped cell. */
export function cellStates(
  judged: readonly JudgedCase[],
  guards: readonly GuardOutcome[],
  from: Catalogue = catalogue(),
): readonly CellState[] {
  const guarded = guardsByCell(guards, from);
  const examples = cellsNoticedBy(judged.filter(({ notCounting }) => notCounting === null));
  return tables(from).flatMap((rule) =>
    rule.cells().map(({ row, column, text, grade }): CellState => {
      const place = placeOf(row, column);
      const own = guarded.get(`${rule.id} ${place}`);
      const example = examples.has(`${rule.id} ${place}`);
      return {
        table: rule.id,
        place,
        text,
        grade,
        guardedBy: strongest(own, example),
        shiftNoticed: example || own?.noticesShift === true,
      };
    }),
  );
}

function strongest(own: CellGuards | undefined, example: boolean): CellState["guardedBy"] {
  return own?.by.has("copy") ? "copy" : own?.by.has("formula") ? "formula" : example ? "example" : "none";
}
