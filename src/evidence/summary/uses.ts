import type { Force } from "../../formula/declaration.js";
import type { PlantRecord } from "../../plant/record/record.js";

/** The checks behind whose value or limit a rule stands, with their force. */
export type Uses = ReadonlyMap<string, ReadonlyMap<string, Force>>;

type Sized = Pick<PlantRecord, "checks" | "steps">;

/** Which checks lean on which rules, found in the workings of sized plants. */
export function usesIn(records: readonly Sized[]): Uses {
  const uses = new Map<string, Map<string, Force>>();
  for (const { checks, steps = {} } of records) {
    for (const { rule, force, value, limit } of checks) {
      const behind = new Set([rule]);
      const seen = new Set<string>();
      const visit = (id: string): void => {
        const step = steps[id];
        if (!step || seen.has(id)) return;
        seen.add(id);
        if (step.id !== undefined) behind.add(step.id);
        for (const used of Object.values(step.uses ?? {}).flat()) visit(used);
      };
      for (const side of [value, limit]) if (typeof side === "object" && side && "step" in side) visit(side.step);
      for (const id of behind) uses.set(id, (uses.get(id) ?? new Map<string, Force>()).set(rule, force));
    }
  }
  return uses;
}
