import type { Citation } from "../../source/index.js";
import { element, type Markup } from "../markup/markup.js";
import { citationText, gradeWord, seenText } from "../view/words.js";

/** Citations as a list: where it stands, where it was seen, and what that is worth. */
export function citationList(source: readonly Citation[]): Markup | null {
  if (source.length === 0) return null;
  return element(
    "ul",
    { class: "citations" },
    source.map((citation) => {
      const seen = seenText(citation);
      return element(
        "li",
        {},
        citationText(citation),
        seen === null ? "" : `, ${seen}`,
        ` – ${gradeWord(citation.grade)}`,
      );
    }),
  );
}
