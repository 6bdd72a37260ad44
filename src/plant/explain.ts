import { InputError } from "../quantity/index.js";
import type { PlantRecord, RecordedNumber } from "./record/record.js";
import { type ExplainedStep, stepsBehind } from "./record/steps-behind.js";
import { sizePlant } from "./size-plant.js";

function stepKeys(sides: readonly unknown[]): string[] {
  return sides.flatMap((side) =>
    typeof side === "object" && side !== null && "step" in side ? [(side as RecordedNumber).step] : [],
  );
}

/**
 * The working behind a check or a step of a record, inputs before results. A record that was made without its working is
 * sized again from its own plant.
 *
 * @param record - a sizing record
 * @param id - id of a check, or key of a step
 * @throws InputError where the record has no such check or step
 * @example
 * ```ts
 * import { explain, sizePlant } from "pv-to-grid";
 * const record = sizePlant(plant);
 * explain(record, record.checks[0]!.id).at(-1)!.equation;
 * ```
 */
export function explain(record: PlantRecord, id: string): readonly ExplainedStep[] {
  const steps = record.steps ?? sizePlant(record.plant).steps ?? {};
  if (Object.hasOwn(steps, id)) return stepsBehind(steps, [id]);
  const check = record.checks.find((item) => item.id === id);
  if (check) return stepsBehind(steps, stepKeys([check.value, check.limit]));
  throw new InputError("explain", [
    {
      path: "id",
      code: "not-in-list",
      message: `the record has no check or step named ${id}`,
      expected: "the id of a check, or the key of a step",
      received: id,
    },
  ]);
}
