import type { Citation } from "../../../../src/source/index.js";
import { code, escaped, gradeMark } from "../html.js";
import { anchorOf, type PageLinks } from "../links.js";

/** A publication, linked to its entry in the list of sources. */
export function publication(key: string, links: PageLinks): string {
  return `<a href="${links.document("Sources")}#${anchorOf(key)}">${escaped(key)}</a>`;
}

/** A citation in a line: what is claimed, where it was seen, and the grade. */
export function citation({ in: key, clause, grade, seen }: Citation, links: PageLinks): string {
  const place = seen === undefined ? "" : `, as seen in ${seenIn(seen, links)}`;
  return `${publication(key, links)}, ${escaped(clause)}${place} ${gradeMark(grade)}`;
}

function seenIn(seen: string, links: PageLinks): string {
  const [, key, place] = /^(.*?:(?:\d{4}|undated)[^,]*)(?:, (.*))?$/.exec(seen) ?? [];
  if (key === undefined) return escaped(seen);
  return `${publication(key, links)}${place === undefined ? "" : `, ${escaped(place)}`}`;
}

/** A key, linked to its words in the glossary where they are there. */
export function term(key: string, links: PageLinks): string {
  return key in links.knowledge.terms
    ? `<a href="${links.document("Glossary")}#${anchorOf(key)}">${code(key)}</a>`
    : code(key);
}

/** A rule's name, linked to its page. */
export function ruleLink(id: string, links: PageLinks): string {
  const href = links.rule(id);
  return href === null ? code(id) : `<a href="${href}">${code(id)}</a>`;
}
