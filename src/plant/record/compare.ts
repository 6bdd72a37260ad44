import type { PlantRecord, RecordedCheck, RecordedVerdict } from "./record.js";

/** One place in which two records differ. */
export interface Change {
  readonly path: string;
  /** `undefined` where it is not there. */
  readonly before: unknown;
  readonly after: unknown;
}

/** A check whose verdict differs; `null` where it is not there. */
export interface Flip {
  readonly check: string;
  readonly before: RecordedVerdict | null;
  readonly after: RecordedVerdict | null;
}

// Steps are numbered anew in each record and follow from the rest, so they are no difference of their own.
const LEFT_OUT = new Set(["steps", "declarations", "sources", "checks", "step"]);

function collect(before: unknown, after: unknown, path: string, into: Change[]): void {
  if (Object.is(before, after)) return;
  const both = [before, after];
  if (
    both.every((side) => typeof side === "object" && side !== null) &&
    Array.isArray(before) === Array.isArray(after)
  ) {
    const [a, b] = both as [Record<string, unknown>, Record<string, unknown>];
    for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
      if (LEFT_OUT.has(key)) continue;
      const step = Array.isArray(before) ? `[${key}]` : path === "" ? key : `.${key}`;
      collect(a[key], b[key], `${path}${step}`, into);
    }
    return;
  }
  into.push({ path, before, after });
}

/**
 * What differs between two sizing records, and which checks changed their verdict.
 *
 * @example
 * ```ts
 * import { compare, sizePlant } from "pv-to-grid";
 * const changes = compare(sizePlant(plant), sizePlant({ ...plant, name: "Another name" }));
 * changes.flipped; // []
 * ```
 */
export function compare(
  before: PlantRecord,
  after: PlantRecord,
): { readonly changed: readonly Change[]; readonly flipped: readonly Flip[] } {
  const changed: Change[] = [];
  collect(before, after, "", changed);
  const byId = (checks: readonly RecordedCheck[]): Map<string, RecordedCheck> =>
    new Map(checks.map((check) => [check.id, check]));
  const [a, b] = [byId(before.checks), byId(after.checks)];
  const flipped: Flip[] = [];
  for (const id of new Set([...a.keys(), ...b.keys()])) {
    const [was, is] = [a.get(id), b.get(id)];
    collect(was, is, `checks[${id}]`, changed);
    if (was?.verdict !== is?.verdict)
      flipped.push({ check: id, before: was?.verdict ?? null, after: is?.verdict ?? null });
  }
  return { changed, flipped };
}
