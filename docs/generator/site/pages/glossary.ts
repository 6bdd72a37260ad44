import { code, escaped, table } from "../html.js";
import type { PageLinks } from "../links.js";
import { anchorOf } from "../links.js";
import { inlineSymbol } from "../math/symbol.js";
import { ruleLink } from "../rule/citations.js";

const SHOWN = 6;

const ABOUT = `<p>One key stands for one quantity everywhere: in formulas, plant descriptions, records and cases. Beside it the words of the IEC family
(after IEC 60050 and the standards of the field) and of the NEC family (NFPA 70 and the datasheets of its countries). A dash stands where a practice has no word of its own.</p>`;

/** The field's words and symbols, both practices side by side, with the rules that use each. */
export function glossaryPage(links: PageLinks): string {
  const { terms, usersOf } = links.knowledge;
  const byLetter = new Map<string, (readonly [string, (typeof terms)[string]])[]>();
  for (const entry of Object.entries(terms).sort(([a], [b]) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1))) {
    const letter = entry[0].charAt(0).toUpperCase();
    byLetter.set(letter, [...(byLetter.get(letter) ?? []), entry]);
  }
  const parts = [...byLetter].map(([letter, entries]) => {
    const rows = entries.map(([key, { symbol, iec, nec }]) => {
      const users = usersOf(key);
      const more = users.length > SHOWN ? ` and ${users.length - SHOWN} more` : "";
      return [
        `<span id="${anchorOf(key)}" class="key">${symbol === null ? "" : `${inlineSymbol(symbol)} `}${code(key)}</span>`,
        escaped(iec),
        nec === null ? "–" : escaped(nec),
        users
          .slice(0, SHOWN)
          .map(({ id }) => ruleLink(id, links))
          .join(", ") + more,
      ];
    });
    return `<h2 id="letter-${letter}">${letter}</h2>${table(["symbol and key", "IEC", "NEC", "taken by"], rows)}`;
  });
  const letters = [...byLetter.keys()].map((letter) => `<a href="#letter-${letter}">${letter}</a>`).join(" ");
  return `<h1>Glossary</h1>${ABOUT}<p class="letters">${letters}</p>${parts.join("")}`;
}

/** The glossary's words as plain text, for the search. */
export function glossaryWords({ knowledge: { terms } }: Pick<PageLinks, "knowledge">): string {
  return Object.entries(terms)
    .map(([key, { symbol, iec, nec }]) => [key, symbol, iec, nec].filter((part) => part !== null).join(", "))
    .join("\n");
}
