import type { RecordedCheck } from "../../plant/index.js";
import { all, element, type Markup } from "../markup/markup.js";
import { sidesOf, stepsOf } from "../view/check-text.js";
import { utilisationText } from "../view/number-text.js";
import { citationText, FORCES, gradeWord, reasonOf, remedyOf, seenText, sentence, VERDICTS } from "../view/words.js";
import type { Working } from "./working.js";

/** Anchor of a check; ids hold names of the user, so the signs that a link would escape are spelled out. */
export function checkAnchor(id: string): string {
  return `c-${id.replace(/[^A-Za-z0-9/_-]/g, (sign) => `.${sign.codePointAt(0)!.toString(36)}.`)}`;
}

export function verdictMark(verdict: RecordedCheck["verdict"]): Markup {
  const { shape, word } = VERDICTS[verdict];
  return element("span", { class: `verdict ${verdict}` }, element("span", { "aria-hidden": "true" }, shape), " ", word);
}

/** One check as one line that unfolds to its working. */
export function checkLine(check: RecordedCheck, working: Working, { open }: { readonly open: boolean }): Markup {
  const { utilisation, asks, id } = check;
  return element(
    "details",
    { class: "check", id: checkAnchor(id), open: open && true },
    element(
      "summary",
      {},
      verdictMark(check.verdict),
      element(
        "span",
        { class: "asks" },
        asks,
        check.force === "requirement" ? null : element("span", { class: "force" }, ` (${FORCES[check.force]})`),
      ),
      element("span", { class: "sides" }, comparison(check)),
      utilisation === null ? element("span", { class: "use" }) : bar(utilisation, check.verdict === "not-met"),
      element("span", { class: "clause" }, clause(check)),
    ),
    unfolded(check, working),
  );
}

function comparison(check: RecordedCheck): Markup {
  const { value, relation, limit } = sidesOf(check);
  if (value === null && limit === null) return all("");
  const side = (text: string | null): Markup =>
    element("span", { class: text === null ? "unknown" : "side" }, text ?? "not known");
  return all(side(value), " ", element("span", { class: "relation" }, relation), " ", side(limit));
}

const MOST_LETTERS = 44;

/** The clause in the margin, cut where it is long; unfolded, the check names it in full. */
function clause({ source, grade }: RecordedCheck): Markup {
  const word = element("span", { class: "grade" }, gradeWord(grade));
  if (source === null || source.in === "common practice") return word;
  const text = citationText(source);
  const cut = text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS - 1).trimEnd()}…` : text;
  return all(element("span", { title: cut === text ? null : text }, cut), " ", word);
}

const FULL = 80;
const MOST = 100;

/** Utilisation as a thin bar; the tick is the limit. */
function bar(utilisation: string, passed: boolean): Markup {
  const share = Math.min(Number(utilisation) * FULL, MOST);
  return element(
    "span",
    { class: passed ? "use passed" : "use" },
    element("span", { class: "bar", "aria-hidden": "true" }, element("span", { style: `width:${share.toFixed(1)}%` })),
    element(
      "span",
      { class: "share", title: utilisation },
      element("span", { class: "aside" }, "used "),
      utilisationText(utilisation),
    ),
  );
}

function unfolded(check: RecordedCheck, working: Working): Markup {
  const { source, grade } = check;
  const [reason, remedy] = [reasonOf(check), check.verdict === "met" ? null : remedyOf(check)];
  const seen = source === null ? null : seenText(source);
  return element(
    "div",
    { class: "unfolded" },
    reason === null ? null : element("p", {}, sentence(reason)),
    remedy === null ? null : element("p", { class: "remedy" }, element("strong", {}, "Remedy: "), sentence(remedy)),
    working.steps(stepsOf(check), checkAnchor(check.id)),
    element(
      "p",
      { class: "rule" },
      "Rule ",
      element("code", {}, check.rule),
      source === null ? "" : `: ${citationText(source)}`,
      seen === null ? "" : `, ${seen}`,
      `. Weakest grade behind it: ${gradeWord(grade)}.`,
    ),
  );
}
