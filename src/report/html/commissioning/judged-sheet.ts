import type { JudgedReading, JudgedSheet } from "../../../plant/index.js";
import { all, element, type Markup } from "../../markup/markup.js";
import { numbers } from "../../view/cell.js";
import { judgedSentence, READING_VERDICTS } from "../../view/judged.js";
import { sentence } from "../../view/words.js";
import { checkLine } from "../check-line.js";
import { cautions as cautionBox } from "../outcome.js";
import { htmlPage } from "../html-page.js";
import { cellsMarkup } from "../rows.js";
import { sheet } from "../sheets.js";
import { makeWorking, type Working } from "../working.js";

/**
 * A judged measurement sheet as one HTML page: what lies outside first, then hints where to look, every reading with its
 * band, and the checks with their working.
 *
 * @param judged - a sheet that `judgeSheet` has judged
 * @example
 * ```ts
 * import { judgedSheetHtml } from "pv-to-grid/report";
 * import { judgeSheet } from "pv-to-grid/plant";
 * // judgedSheetHtml(judgeSheet(record, sheet));
 * ```
 */
export function judgedSheetHtml(judged: JudgedSheet): string {
  const working = makeWorking(judged);
  const { plant, date, by, library, cautions, checks, performance } = judged;
  const body = element(
    "body",
    {},
    element("a", { class: "skip", href: "#outcome" }, "Skip to the outcome"),
    element(
      "header",
      { class: "title-block" },
      element("h1", {}, `${plant}: readings at first switch-on`),
      element("dl", {}, cell("judged with", `pv-to-grid ${library}`), cell("date", date), cell("measured by", by)),
    ),
    element(
      "main",
      {},
      outcomeSection(judged, working),
      readingsSheet(judged, working),
      comparisonsSheet(judged, working),
      performance === null ? null : performanceSection(performance, working),
      element(
        "section",
        { id: "checks" },
        element("h2", {}, "Checks"),
        element(
          "div",
          { class: "checks" },
          checks.map((check) => checkLine(check, working, { open: false })),
        ),
      ),
      cautionBox(cautions, "cautions-again"),
    ),
    element("footer", { id: "working" }, working.cards()),
  );
  return htmlPage(`${plant}: readings`, body);
}

const cell = (label: string, text: string | null): Markup | null =>
  text === null ? null : element("div", {}, element("dt", {}, label), element("dd", {}, text));

function verdict(reading: JudgedReading): Markup {
  const { shape, word, mark } = READING_VERDICTS[reading.verdict];
  return element("span", { class: `verdict ${mark}` }, element("span", { "aria-hidden": "true" }, shape), " ", word);
}

function outcomeSection(judged: JudgedSheet, working: Working): Markup {
  const { readings, hints, unplaced, notes, cautions } = judged;
  const outside = readings.filter((reading) => reading.verdict === "outside");
  return element(
    "section",
    { id: "outcome", "aria-label": "Outcome" },
    element("h2", { class: "sentence" }, judgedSentence(judged)),
    outside.map((reading) =>
      element(
        "article",
        { class: "attention not-met" },
        element("p", {}, verdict(reading), ` ${reading.what}`, element("span", { class: "at" }, ` ${reading.at}`)),
        element("p", {}, cellsMarkup(numbers(reading.value), working), " – ", band(reading, working)),
        reading.note === null ? null : element("p", {}, sentence(reading.note)),
      ),
    ),
    unplaced.map(({ at, reading }) =>
      element(
        "p",
        {},
        `${reading} at ${at === "" ? "the plant" : at}: this place is not known; compare its name with the sheet.`,
      ),
    ),
    hints.length === 0
      ? null
      : all(
          element("p", { class: "kind" }, "Where to look; hints, not verdicts"),
          element(
            "ul",
            { class: "dashes" },
            hints.map(({ at, text }) => element("li", {}, `${at.join(", ")}: ${sentence(text)}`)),
          ),
        ),
    element(
      "ul",
      { class: "dashes" },
      notes.map((note) => element("li", {}, sentence(note))),
    ),
    cautionBox(cautions, "cautions"),
  );
}

function band({ low, high }: JudgedReading, working: Working): Markup {
  if (low && high) return all(cellsMarkup(numbers(low), working), " to ", cellsMarkup(numbers(high), working));
  return all(low ? "at least " : high ? "at most " : "", cellsMarkup(numbers(low, high), working));
}

function readingsSheet({ readings }: JudgedSheet, working: Working): Markup {
  const rows = readings.map((reading) => [
    reading.at === "" ? "whole plant" : reading.at,
    reading.what,
    verdict(reading),
    cellsMarkup(numbers(reading.value), working),
    cellsMarkup(numbers(reading.expected), working),
    all(
      band(reading, working),
      reading.missing.length === 0 || reading.verdict === "missing"
        ? null
        : element("span", { class: "fixed" }, ` – needs ${reading.missing.join(", ")}`),
    ),
    reading.note ?? "",
  ]);
  return sheet("readings", "Readings", ["place", "reading", "verdict", "read", "expected", "within", "note"], rows);
}

function comparisonsSheet({ comparisons }: JudgedSheet, working: Working): Markup | null {
  if (comparisons.length === 0) return null;
  const rows = comparisons.map(({ reading, at, spread }) => [
    reading,
    at.join(", "),
    spread ? working.number(spread, { percent: true }) : "not known",
  ]);
  return sheet("comparisons", "Identical strings against each other", ["reading", "strings", "spread"], rows);
}

function performanceSection(found: NonNullable<JudgedSheet["performance"]>, working: Working): Markup {
  const rows = [
    ["energy over rated power", working.number(found.finalYield)],
    ["hours of standard irradiance", working.number(found.referenceYield)],
    ["performance ratio", working.number(found.performanceRatio)],
  ];
  return sheet("performance", "The day", ["what", "value"], rows);
}
