import type { Findings } from "./findings.js";
import { page, table } from "./markdown.js";

/** The register of releases that gave a wrong number. */
export function releasesPage({ wrongReleases }: Findings): string {
  return page("Releases that were wrong", [
    "Every release that gave a wrong number, what it gave and what was due. A changed number is at least a minor release.",
    table(
      ["releases", "rule", "gave", "due", "effect", "found by", "fixed in"],
      wrongReleases.map(({ releases, rule, gave, due, effect, foundBy, fixedIn }) => [
        releases,
        rule,
        gave,
        due,
        effect,
        foundBy,
        fixedIn,
      ]),
      "None so far: 0.1.0 is not yet released.",
    ),
  ]);
}
