import type { PlantRecord } from "../../plant/index.js";
import { CABLE_ALLOWANCE, materialList } from "../material/material-list.js";
import { cellText, rowText } from "../text/cell-text.js";
import { comparisonText } from "../view/check-text.js";
import { statements } from "../view/description.js";
import { utilisationText } from "../view/number-text.js";
import type { ReportOptions } from "../view/options.js";
import { type Concern, concernsOf, placesText } from "../view/attention.js";
import { outcomeNotes, outcomeSentence } from "../view/outcome.js";
import { type Place, placeHead, placeName, placesOf } from "../view/places.js";
import { citationText, FORCES, gradeWord, sentence, VERDICTS } from "../view/words.js";
import { markdownText as md } from "./escape.js";

type Line = string;

/**
 * The report as Markdown, in the order of the HTML report.
 *
 * @example
 * ```ts
 * import { reportMarkdown } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * reportMarkdown(sizePlant(plant)).startsWith("# "); // true
 * ```
 */
export function reportMarkdown(record: PlantRecord, options: ReportOptions = {}): string {
  const { cableAllowance = CABLE_ALLOWANCE } = options;
  const { plant, toDo, sources, assumptions } = record;
  const cautions = list(record.cautions.map(sentence));
  const lines: Line[] = [
    `# ${md(plant.name)}`,
    "",
    ...titleLines(record, options),
    "",
    `## ${md(outcomeSentence(record))}`,
    "",
    ...concernsOf(record).flatMap(concernLines),
    ...outcomeNotes(record).flatMap((note) => [md(note), ""]),
    "### Cautions",
    "",
    ...cautions,
    "",
    "## To do",
    "",
    ...(toDo.length === 0 ? ["Nothing beyond the usual work."] : toDo.map(({ text }) => `- [ ] ${md(text)}`)),
    "",
    "## From the module to the grid",
    "",
    ...placesOf(record).flatMap((place) => placeLines(record, place)),
    ...settingsLines(record),
    `## Material`,
    "",
    `Cable lengths include an allowance of ${md(cableAllowance)}.`,
    "",
    ...table(
      ["what", "size", "quantity", "where"],
      materialList(record, cableAllowance).map(({ what, size, quantity, unit, where }) => [
        what,
        size,
        `${cellText(quantity)}${quantity.kind === "made" ? "" : ` ${unit}`}`,
        where,
      ]),
    ),
    "",
    "## Sources",
    "",
    ...table(
      ["publication", "title", "publisher", "grade"],
      sources.map(({ key, title, publisher, year, grades }) => [
        key,
        title,
        year === null ? publisher : `${publisher}, ${year}`,
        grades.map(gradeWord).join(", "),
      ]),
    ),
    "",
    "## Assumptions",
    "",
    ...(assumptions.length === 0
      ? ["Nothing was assumed beyond what the description states."]
      : table(
          ["what", "value", "source"],
          assumptions.map(({ about, value, source }) => [
            about,
            cellText({ kind: "number", number: value }),
            source.map(citationText).join("; "),
          ]),
        )),
    "",
    "## Cautions, once more",
    "",
    ...cautions,
  ];
  return `${lines.join("\n")}\n`;
}

const list = (texts: readonly string[]): readonly Line[] => texts.map((text) => `- ${md(text)}`);

function table(heads: readonly string[], rows: readonly (readonly string[])[]): readonly Line[] {
  const line = (cells: readonly string[]): Line => `| ${cells.map(md).join(" | ")} |`;
  return [line(heads), `|${heads.map(() => " --- |").join("")}`, ...rows.map(line)];
}

function titleLines(record: PlantRecord, { date, by }: ReportOptions): readonly Line[] {
  const { rules, library } = record;
  const facts = [
    ["wiring", rules.wiring],
    ["array", rules.pv],
    ["connection", rules.grid],
    ["supply", rules.supply],
    ["sized with", `pv-to-grid ${library}`],
    ...(by === undefined ? [] : [["presented by", by]]),
    ...(date === undefined ? [] : [["date", date]]),
    ...statements(record).map(({ what, statedIn }) => [what, statedIn]),
  ] as const;
  return facts.map(([label, text]) => `- ${md(label)}: ${md(text)}`);
}

function concernLines({ check, places, sides, reason, remedy }: Concern): readonly Line[] {
  const { shape, word } = VERDICTS[check.verdict];
  const force = check.force === "requirement" ? "" : ` (${FORCES[check.force]})`;
  const where = places.length === 0 ? "" : ` – ${md(placesText(places))}`;
  return [
    `- ${shape} **${word}** ${md(`${check.asks}${force}${sides === null ? "" : ` ${sides}`}`)}${where}`,
    ...(reason === null ? [] : [`  ${md(sentence(reason))}  `]),
    ...(remedy === null ? [] : [`  **Remedy:** ${md(sentence(remedy))}`]),
    "",
  ];
}

function placeLines(record: PlantRecord, place: Place): readonly Line[] {
  const { rows, checks } = place;
  const head = `${placeHead(place, record)}${placeName(place)}`;
  const results = rows.map((row) => [row.label, `${rowText(row)}${row.chosen === true ? " (chosen)" : ""}`]);
  const lines = checks.map((check) => {
    const { shape, word } = VERDICTS[check.verdict];
    const used = check.utilisation === null ? "" : utilisationText(check.utilisation);
    return [
      `${shape} ${word}`,
      check.asks,
      comparisonText(check),
      used,
      check.source === null ? "" : citationText(check.source),
      gradeWord(check.grade),
    ];
  });
  return [
    `### ${md(head)}`,
    "",
    ...(results.length === 0 ? [] : [...table(["", "result"], results), ""]),
    ...(lines.length === 0
      ? []
      : [...table(["verdict", "question", "value and limit", "used", "clause", "grade"], lines), ""]),
  ];
}

function settingsLines({ grid, rules }: PlantRecord): readonly Line[] {
  if (grid.settings.length === 0) return [];
  const rows = grid.settings.map(({ label, value, lineToNeutral, delay, source, grade, confirm }) => {
    const volts = [value, lineToNeutral].flatMap((number) => (number ? [cellText({ kind: "number", number })] : []));
    return [
      label,
      [...new Set(volts)].join(", "),
      delay ? cellText({ kind: "number", number: delay }) : "",
      source === null ? "" : `${citationText(source)} – ${gradeWord(grade)}`,
      confirm ?? "",
    ];
  });
  return [
    "## Grid settings",
    "",
    `For ${md(rules.grid)}.`,
    "",
    ...table(["setting", "value", "delay", "source", "before it is entered"], rows),
    "",
  ];
}
