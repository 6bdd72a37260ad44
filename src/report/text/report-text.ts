import type { PlantRecord } from "../../plant/index.js";
import { CABLE_ALLOWANCE, materialList } from "../material/material-list.js";
import type { Row } from "../view/cell.js";
import { type Concern, concernsOf, placesText } from "../view/attention.js";
import type { ReportOptions } from "../view/options.js";
import { outcomeNotes, outcomeSentence } from "../view/outcome.js";
import { type Place, placeHead, placeName, placesOf, tallyOf } from "../view/places.js";
import { plainText } from "../view/plain-text.js";
import { FORCES, gradeWord, sentence, VERDICTS } from "../view/words.js";
import { cellText, rowText } from "./cell-text.js";
import { hung } from "./lines.js";

/** What a terminal adds. */
export interface TextOptions extends ReportOptions {
  /** Letters a line; left out, 80. */
  readonly width?: number;
  /** For the foreman: of each place only what was chosen; no sources, assumptions or second cautions. */
  readonly brief?: boolean;
  /** Where the files went, for the last line. */
  readonly files?: readonly string[];
}

const WIDTH = 80;
const LABEL = 46;

/**
 * The report for a terminal: outcome, what needs a person, cautions, to do, then place by place. Only what is not met or
 * open has a line of its own; the rest is counted. No colour is used.
 *
 * @example
 * ```ts
 * import { reportText } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * console.log(reportText(sizePlant(plant)));
 * ```
 */
export function reportText(record: PlantRecord, options: TextOptions = {}): string {
  const { width = WIDTH, files = [], brief = false, date, cableAllowance = CABLE_ALLOWANCE } = options;
  const { plant, rules, library } = record;
  const lines = [
    ...hung("", plainText(plant.name), width),
    ...hung("", `${rules.wiring}; ${rules.pv}; ${rules.grid}; ${rules.supply}`, width),
    `pv-to-grid ${library}${date === undefined ? "" : `, ${plainText(date)}`}`,
    "",
    ...hung("", outcomeSentence(record), width),
    ...concernsOf(record).flatMap((concern) => concernLines(concern, width)),
    ...outcomeNotes(record).flatMap((note) => hung("", note, width)),
    ...section(
      "Cautions",
      record.cautions.flatMap((caution) => hung("  ! ", sentence(caution), width)),
    ),
    ...section(
      "To do",
      record.toDo.flatMap(({ text }) => hung("  [ ] ", text, width)),
    ),
    ...section(
      "From the module to the grid",
      placesOf(record).flatMap((place) => placeLines(record, place, width, brief)),
    ),
    ...section(
      `Material (cables with an allowance of ${cableAllowance})`,
      materialList(record, cableAllowance).flatMap(({ what, size, quantity, unit, where }) =>
        hung(
          "  ",
          `${cellText(quantity)}${quantity.kind === "made" ? "" : ` ${unit}`} – ${what} ${size} (${where})`,
          width,
          4,
        ),
      ),
    ),
    ...(brief ? [] : reference(record, width)),
    ...(files.length === 0 ? [] : ["", ...hung("", `Written: ${files.join(", ")}`, width)]),
  ];
  return `${lines.join("\n")}\n`;
}

/** What one looks up afterwards, and the cautions again. */
function reference(record: PlantRecord, width: number): readonly string[] {
  return [
    ...section(
      "Assumptions",
      record.assumptions.flatMap(({ about, value }) =>
        hung("  ", `${about}: ${cellText({ kind: "number", number: value })}`, width, 4),
      ),
    ),
    ...section(
      "Sources",
      record.sources.flatMap(({ key, grades }) => hung("  ", `${key} – ${grades.map(gradeWord).join(", ")}`, width, 4)),
    ),
    ...section(
      "Cautions, once more",
      record.cautions.flatMap((caution) => hung("  ! ", sentence(caution), width)),
    ),
  ];
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", title, ...lines];
}

/** What is not met or open: one line, then its reason and remedy. */
function concernLines({ check, places, sides, reason, remedy }: Concern, width: number): readonly string[] {
  const { shape, word } = VERDICTS[check.verdict];
  const force = check.force === "requirement" ? "" : ` (${FORCES[check.force]})`;
  const where = places.length === 0 ? "" : ` – ${plainText(placesText(places))}`;
  return [
    ...hung(`  ${shape} ${word}: `, `${check.asks}${force}${sides === null ? "" : ` ${sides}`}${where}`, width, 6),
    ...(reason === null ? [] : hung("      ", sentence(reason), width)),
    ...(remedy === null ? [] : hung("      Remedy: ", sentence(remedy), width, 6)),
  ];
}

function placeLines(record: PlantRecord, place: Place, width: number, brief: boolean): readonly string[] {
  const { rows, checks } = place;
  const { met, "not-met": notMet, open } = tallyOf(checks);
  const counts = [
    notMet > 0 ? `▲ ${notMet} not met` : "",
    open > 0 ? `○ ${open} open` : "",
    met > 0 ? `● ${met} met` : "",
  ].filter((text) => text !== "");
  const head = `  ${placeHead(place, record)}${plainText(placeName(place))}`;
  return [
    `${head}${counts.length === 0 ? "" : `: ${counts.join(", ")}`}`,
    ...rows.filter(({ chosen }) => !brief || chosen === true).flatMap((row) => rowLines(row, width)),
    ...(brief ? [] : [""]),
  ];
}

function rowLines(row: Row, width: number): readonly string[] {
  const label = `    ${row.label} `.padEnd(LABEL, ".");
  return hung(`${label} `, `${rowText(row)}${row.chosen === true ? " (chosen)" : ""}`, width);
}
