/**
 * How a value is held, strongest first: seen in the cited publication itself; seen in another edited publication that
 * names the clause; seen only in copies without an editor; a fact of the trade without a publication; recalled.
 */
export const grades = ["original", "reproduced", "copied", "common-practice", "memory"] as const;

/** How a value is held. */
export type Grade = (typeof grades)[number];

/** The weaker of two grades; `null` stands for a value that has none, such as a user's input. */
export function weaker(a: Grade | null, b: Grade | null): Grade | null {
  if (a === null) return b;
  if (b === null) return a;
  return grades.indexOf(a) >= grades.indexOf(b) ? a : b;
}

/** The best grade among the citations of one declaration, or `null` where it has none. */
export function bestGrade(citations: readonly { readonly grade: Grade }[]): Grade | null {
  let best: Grade | null = null;
  for (const { grade } of citations) {
    if (best === null || grades.indexOf(grade) < grades.indexOf(best)) best = grade;
  }
  return best;
}
