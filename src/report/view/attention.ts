import type { PlantRecord, RecordedCheck } from "../../plant/index.js";
import { comparisonText } from "./check-text.js";
import { attentionOf } from "./outcome.js";
import { pathsText, reasonOf, remedyOf } from "./words.js";

/** Checks that ask the same with the same outcome and remedy, told once with all their places. */
export interface Concern {
  /** The first of them. */
  readonly check: RecordedCheck;
  readonly ids: readonly string[];
  readonly places: readonly string[];
  /** Value and limit, where both are known. */
  readonly sides: string | null;
  readonly reason: string | null;
  readonly remedy: string | null;
}

/** What needs a person, gravest first. */
export function concernsOf(record: PlantRecord): readonly Concern[] {
  const { notMet, open, lesser } = attentionOf(record);
  return [notMet, open, lesser].flatMap(grouped);
}

function grouped(checks: readonly RecordedCheck[]): readonly Concern[] {
  const groups = new Map<string, RecordedCheck[]>();
  for (const check of checks) {
    // Paths that differ in their index only, such as those of equal inverters, ask for the same.
    const missing = check.missing.map((path) => path.replace(/\[\d+\]/g, "[]"));
    const key = JSON.stringify([check.rule, check.verdict, sidesText(check), check.because, check.remedy, missing]);
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  return [...groups.values()].map(concern);
}

function sidesText(check: RecordedCheck): string | null {
  return check.value === null || check.limit === null ? null : comparisonText(check);
}

function concern(checks: readonly RecordedCheck[]): Concern {
  const [check] = checks as [RecordedCheck, ...RecordedCheck[]];
  const missing = [...new Set(checks.flatMap((each) => each.missing))];
  const asksForPaths = check.verdict === "open" && missing.length > 0;
  return {
    check,
    ids: checks.map(({ id }) => id),
    places: checks.map(({ at }) => at).filter((at) => at !== ""),
    sides: sidesText(check),
    reason: reasonOf(check),
    remedy: asksForPaths ? `Find out and state: ${pathsText(missing)}.` : remedyOf(check),
  };
}

const MOST_PLACES = 6;

/** Places in a line; many are cut. */
export function placesText(places: readonly string[]): string {
  const named = places.slice(0, MOST_PLACES).join(", ");
  const rest = places.length - MOST_PLACES;
  return rest > 0 ? `${named} and ${rest} more` : named;
}
