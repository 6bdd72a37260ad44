import { InputError } from "../../quantity/index.js";
import type { PlantRecord, RecordedNumber, RecordedStep } from "./record.js";

/** One step of an explanation, with its key. */
export type ExplainedStep = RecordedStep & { readonly step: string };

function unfold(steps: Readonly<Record<string, RecordedStep>>, id: string, seen: Set<string>, into: ExplainedStep[]): void {
  if (seen.has(id)) return;
  seen.add(id);
  const step = steps[id];
  if (!step) return;
  for (const used of Object.values(step.uses ?? {}).flat()) unfold(steps, used, seen, into);
  into.push({ step: id, ...step });
}

/** The steps behind some numbers of a record, inputs before results, each once. */
export function stepsBehind(steps: Readonly<Record<string, RecordedStep>>, ids: readonly string[]): readonly ExplainedStep[] {
  const into: ExplainedStep[] = [];
  const seen = new Set<string>();
  for (const id of ids) unfold(steps, id, seen, into);
  return into;
}

function stepsOfCheck(sides: readonly unknown[]): string[] {
  return sides.flatMap((side) => (typeof side === "object" && side !== null && "step" in side ? [(side as RecordedNumber).step!] : []));
}

/**
 * The working behind a check or a step of a record, inputs before results.
 *
 * @param record - a sizing record with its working
 * @param id - id of a check, or key of a step
 * @throws InputError where the record has no such check or step, or was made without working
 */
export function explain(record: PlantRecord, id: string): readonly ExplainedStep[] {
  const { steps, checks } = record;
  const fail = (message: string, expected: string): InputError =>
    new InputError("explain", [{ path: "id", code: "not-in-list", message, expected, received: id }]);
  if (!steps) throw fail("this record was made without its working; size the plant again with it", "a record with steps");
  if (Object.hasOwn(steps, id)) return stepsBehind(steps, [id]);
  const check = checks.find((item) => item.id === id);
  if (!check) throw fail(`the record has no check or step named ${id}`, "the id of a check, or the key of a step");
  return stepsBehind(steps, stepsOfCheck([check.value, check.limit]));
}
