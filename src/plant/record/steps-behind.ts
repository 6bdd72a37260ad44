import type { RecordedStep } from "./record.js";

/** One step of an explanation, with its key. */
export type ExplainedStep = RecordedStep & { readonly step: string };

function unfold(
  steps: Readonly<Record<string, RecordedStep>>,
  id: string,
  seen: Set<string>,
  into: ExplainedStep[],
): void {
  if (seen.has(id)) return;
  seen.add(id);
  const step = steps[id];
  if (!step) return;
  for (const used of Object.values(step.uses ?? {}).flat()) unfold(steps, used, seen, into);
  into.push({ step: id, ...step });
}

/** The steps behind some numbers of a record, inputs before results, each once. */
export function stepsBehind(
  steps: Readonly<Record<string, RecordedStep>>,
  ids: readonly string[],
): readonly ExplainedStep[] {
  const into: ExplainedStep[] = [];
  const seen = new Set<string>();
  for (const id of ids) unfold(steps, id, seen, into);
  return into;
}
