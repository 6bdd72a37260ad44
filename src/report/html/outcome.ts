import type { PlantRecord, RecordedCheck } from "../../plant/index.js";
import { all, element, type Markup } from "../markup/markup.js";
import { comparisonText } from "../view/check-text.js";
import { attentionOf, outcomeNotes, outcomeSentence } from "../view/outcome.js";
import { FORCES, reasonOf, remedyOf, sentence } from "../view/words.js";
import { checkAnchor, verdictMark } from "./check-line.js";

/** The outcome as a sentence, then what needs a person with its remedy, then the cautions. */
export function outcomeSection(record: PlantRecord): Markup {
  const { notMet, open, lesser } = attentionOf(record);
  return element(
    "section",
    { id: "outcome", "aria-label": "Outcome" },
    element("h2", { class: `sentence ${record.outcome.verdict}` }, outcomeSentence(record)),
    [...notMet, ...open, ...lesser].map(attention),
    outcomeNotes(record).map((note) => element("p", {}, note)),
    cautions(record, "cautions"),
  );
}

function attention(check: RecordedCheck): Markup {
  const [reason, remedy] = [reasonOf(check), remedyOf(check)];
  const sides = comparisonText(check);
  return element(
    "article",
    { class: `attention ${check.verdict}` },
    element(
      "p",
      {},
      verdictMark(check.verdict),
      " ",
      element("a", { href: `#${checkAnchor(check.id)}` }, check.asks),
      check.at === "" ? null : element("span", { class: "at" }, ` ${check.at}`),
      check.force === "requirement" ? null : ` (${FORCES[check.force]})`,
    ),
    sides === "" || check.value === null || check.limit === null ? null : element("p", { class: "sides" }, sides),
    reason === null ? null : element("p", {}, sentence(reason)),
    remedy === null ? null : element("p", { class: "remedy" }, element("strong", {}, "Remedy: "), sentence(remedy)),
  );
}

/** The cautions; they stand under the outcome and again at the end. */
export function cautions(record: PlantRecord, id: string): Markup {
  return element(
    "section",
    { class: "cautions", id, "aria-label": "Cautions" },
    element("h2", {}, "Cautions"),
    element(
      "ul",
      {},
      record.cautions.map((caution) => element("li", {}, sentence(caution))),
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
