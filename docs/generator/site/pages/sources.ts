import { sources } from "../../../../src/catalogue/index.js";
import { bibliography, type Source } from "../../../../src/source/index.js";
import { escaped } from "../html.js";
import { anchorOf, type PageLinks } from "../links.js";
import { ruleLink } from "../rule/citations.js";

const ABOUT = `<p>Every publication that a rule, a case or a guard names, each edition an entry of its own. “Undated” stands where a publication states no edition; it proves none.
Grades beside a citation say how its value was held: <em>original</em>, <em>reproduced</em>, <em>copied</em>, <em>common practice</em> or <em>memory</em>.</p>`;

/** The bibliography, with the rules that cite each entry. */
export function sourcesPage(links: PageLinks): string {
  const citedBy = new Map<string, readonly string[]>(
    sources(links.knowledge.catalogue).map((one) => [one.key, one.citedBy]),
  );
  const entries = Object.entries(bibliography as Readonly<Record<string, Source>>)
    .sort(([a], [b]) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1))
    .map(([key, { title, publisher, year, kind, note }]) => {
      const rules = citedBy.get(key) ?? [];
      const cited =
        rules.length === 0
          ? "<p>Cited by cases, guards or constants only.</p>"
          : `<details><summary>Cited by ${rules.length} ${rules.length === 1 ? "rule" : "rules"}</summary><p>${rules.map((id) => ruleLink(id, links)).join(", ")}</p></details>`;
      return `<section class="entry"><h3 id="${anchorOf(key)}">${escaped(key)}</h3><p>${escaped(title)}. ${escaped(publisher)}, ${year ?? "undated"} (${kind}).${note === undefined ? "" : ` ${escaped(note)}.`}</p>${cited}</section>`;
    });
  return `<h1>Sources</h1>${ABOUT}${entries.join("")}`;
}

/** The titles as plain text, for the search. */
export function sourcesWords(): string {
  return Object.entries(bibliography as Readonly<Record<string, Source>>)
    .map(([key, { title, publisher }]) => `${key}: ${title}, ${publisher}`)
    .join("\n");
}
