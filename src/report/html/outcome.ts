import type { PlantRecord } from "../../plant/index.js";
import { all, element, type Markup } from "../markup/markup.js";
import { type Concern, concernsOf, placesText } from "../view/attention.js";
import { outcomeNotes, outcomeSentence } from "../view/outcome.js";
import { counted, FORCES, sentence } from "../view/words.js";
import { checkAnchor, verdictMark } from "./check-line.js";

/** The outcome as a sentence, then what needs a person with its remedy, then the cautions. */
export function outcomeSection(record: PlantRecord): Markup {
  return element(
    "section",
    { id: "outcome", "aria-label": "Outcome" },
    element("h2", { class: `sentence ${record.outcome.verdict}` }, outcomeSentence(record)),
    concernsOf(record).map(attention),
    outcomeNotes(record).map((note) => element("p", {}, note)),
    cautions(record.cautions, "cautions"),
  );
}

function attention({ check, places, ids, sides, reason, remedy }: Concern): Markup {
  const more = ids.slice(1);
  return element(
    "article",
    { class: `attention ${check.verdict}` },
    element(
      "p",
      {},
      verdictMark(check.verdict),
      " ",
      element("a", { href: `#${checkAnchor(check.id)}` }, check.asks),
      places.length === 0 ? null : element("span", { class: "at" }, ` ${placesText(places)}`),
      check.force === "requirement" ? null : ` (${FORCES[check.force]})`,
    ),
    more.length === 0 ? null : element("p", { class: "at" }, `The same at ${counted(ids.length, "place")}.`),
    sides === null ? null : element("p", { class: "sides" }, sides),
    reason === null ? null : element("p", {}, sentence(reason)),
    remedy === null ? null : element("p", { class: "remedy" }, element("strong", {}, "Remedy: "), sentence(remedy)),
  );
}

/** The cautions; they stand under the outcome and again at the end. */
export function cautions(texts: readonly string[], id: string): Markup {
  return element(
    "section",
    { class: "cautions", id, "aria-label": "Cautions" },
    element("h2", {}, "Cautions"),
    element(
      "ul",
      {},
      texts.map((text) => element("li", {}, sentence(text))),
    ),
  );
}

const KINDS = { seal: "Seal", set: "Set", measure: "Measure", confirm: "Confirm", supply: "Supply" } as const;

/** What is left to do, as a list to tick with a pencil. */
export function toDoSection({ toDo }: PlantRecord): Markup {
  const kinds = (Object.keys(KINDS) as (keyof typeof KINDS)[]).filter((kind) =>
    toDo.some((item) => item.kind === kind),
  );
  return element(
    "section",
    { id: "to-do" },
    element("h2", {}, "To do"),
    kinds.length === 0 ? element("p", {}, "Nothing beyond the usual work.") : null,
    kinds.map((kind) =>
      all(
        element("p", { class: "kind" }, KINDS[kind]),
        element(
          "ul",
          { class: "ticks" },
          toDo.filter((item) => item.kind === kind).map(({ text }) => element("li", {}, text)),
        ),
      ),
    ),
  );
}
