import type { Findings } from "./findings.js";
import { page } from "./markdown.js";

/** Each departure from print with its evidence. */
export function errataPage({ audit }: Findings): string {
  const entries = audit.summary.errata.map(
    ({ id, source, place, printed, computed, problem, kind, evidence, libraryDoes, direction, cases }) =>
      [
        `## ${id}`,
        [
          `- **Source**: ${source}, ${place}`,
          `- **Printed**: ${printed}; **computed**: ${computed}`,
          `- **Kind**: ${kind}; following the print would be ${direction === "none" ? "neither safe nor unsafe" : direction}`,
          `- **Problem**: ${problem}`,
          `- **Evidence**: ${evidence}`,
          `- **The library**: ${libraryDoes}`,
          ...(cases.length > 0 ? [`- **Cases**: ${cases.join(", ")}`] : []),
        ].join("\n"),
      ].join("\n\n"),
  );
  return page("Errata of published sources", [
    "Printed values that the library does not reproduce. They stay visible, no expected value is edited, and their cases are counted as disputed.",
    ...entries,
  ]);
}
