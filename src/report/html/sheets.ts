import type { PlantRecord, RecordedReading, RecordedSetting } from "../../plant/index.js";
import { all, element, type Child, type Markup } from "../markup/markup.js";
import { CABLE_ALLOWANCE, materialList } from "../material/material-list.js";
import { numbers } from "../view/cell.js";
import type { ReportOptions } from "../view/options.js";
import { citationText, GRADES, gradeWord } from "../view/words.js";
import { cellMarkup, cellsMarkup } from "./rows.js";
import type { Working } from "./working.js";

export function sheet(
  id: string,
  title: string,
  heads: readonly string[],
  rows: readonly (readonly Child[])[],
  note: Child = null,
): Markup {
  return element(
    "section",
    { id },
    element("h2", {}, title),
    note === null ? null : element("p", {}, note),
    element(
      "div",
      { class: "frame", tabindex: "0", role: "group", "aria-label": title },
      element(
        "table",
        { class: "sheet" },
        element(
          "thead",
          {},
          element(
            "tr",
            {},
            heads.map((head) => element("th", { scope: "col" }, head)),
          ),
        ),
        element(
          "tbody",
          {},
          rows.map((cells) =>
            element(
              "tr",
              {},
              cells.map((cell, at) => (at === 0 ? element("th", { scope: "row" }, cell) : element("td", {}, cell))),
            ),
          ),
        ),
      ),
    ),
  );
}

/** The settings that the installer selects or enters at the inverter. */
export function settingsSheet({ grid, rules }: PlantRecord, working: Working): Markup | null {
  if (grid.settings.length === 0) return null;
  const volts = ({ value, lineToNeutral, lineToLine }: RecordedSetting): Markup => {
    const shared = [lineToNeutral, lineToLine].some((number) => number !== null && number.step === value?.step);
    return cellsMarkup(
      numbers(shared ? null : value, lineToNeutral, lineToLine === lineToNeutral ? null : lineToLine),
      working,
    );
  };
  const range = ({ lowest, highest }: RecordedSetting): Markup =>
    all(cellsMarkup(numbers(lowest), working), lowest && highest ? " to " : "", cellsMarkup(numbers(highest), working));
  const times = ({ delay, clearing, averaging }: RecordedSetting): Markup =>
    all(
      cellsMarkup(numbers(delay), working),
      clearing ? all(delay ? ", " : null, "cleared within ", working.number(clearing)) : null,
      averaging === null ? null : all(delay || clearing ? ", " : null, averaging),
    );
  const rows = grid.settings.map((setting) => [
    setting.label,
    volts(setting),
    range(setting),
    times(setting),
    setting.source === null
      ? ""
      : `${citationText(setting.source)}${setting.grade === null ? "" : ` – ${gradeWord(setting.grade)}`}`,
    setting.confirm ?? "",
  ]);
  return sheet(
    "settings",
    "Grid settings",
    ["setting", "value", "range allowed", "time", "source", "before it is entered"],
    rows,
    `For ${rules.grid}. Select the set at the inverter before it feeds; enter single values only where the operator asks for them.`,
  );
}

/** What to order. */
export function materialSection(
  record: PlantRecord,
  working: Working,
  { cableAllowance = CABLE_ALLOWANCE }: ReportOptions,
): Markup {
  const rows = materialList(record, cableAllowance).map(({ what, size, quantity, unit, where }) => [
    what,
    size,
    all(cellMarkup(quantity, working), quantity.kind === "made" ? "" : ` ${unit}`),
    where,
  ]);
  return sheet(
    "material",
    "Material",
    ["what", "size", "quantity", "where"],
    rows,
    `Cable lengths include an allowance of ${cableAllowance} for ends, bends and waste; measure on site before you cut.`,
  );
}

/** Publications, each with the grades at which its values are held. */
export function sourcesSection({ sources }: PlantRecord): Markup {
  const rows = sources.map(({ key, title, publisher, year, grades, note }) => [
    key,
    all(title, note === undefined ? null : ` (${note})`),
    all(publisher, year === null ? "" : `, ${year}`),
    grades.map(gradeWord).join(", "),
  ]);
  const used = new Set(sources.flatMap(({ grades }) => grades));
  const meanings = element(
    "dl",
    { class: "grades" },
    Object.entries(GRADES).flatMap(([grade, { word, meaning }]) =>
      used.has(grade as keyof typeof GRADES) ? [element("dt", {}, word), element("dd", {}, meaning)] : [],
    ),
  );
  return all(sheet("sources", "Sources", ["publication", "title", "publisher", "grade"], rows), meanings);
}

/** What was assumed in place of a fact. */
export function assumptionsSection({ assumptions, plant }: PlantRecord, working: Working): Markup {
  const rows = assumptions.map(({ about, value, source }) => [
    about,
    working.number(value),
    source.map((citation) => `${citationText(citation)} – ${gradeWord(citation.grade)}`).join("; "),
  ]);
  if (rows.length === 0)
    return element(
      "section",
      { id: "assumptions" },
      element("h2", {}, "Assumptions"),
      element("p", {}, `Nothing was assumed beyond what the description of ${plant.name} states.`),
    );
  return sheet("assumptions", "Assumptions", ["what", "value", "source"], rows);
}

/** What an instrument should read on each string at first switch-on, under several suns. */
export function readingsSection({ readings }: PlantRecord, working: Working): Markup | null {
  if (readings.length === 0) return null;
  const suns = [...new Set(readings.map(({ at }) => at))];
  const lines = new Map<string, RecordedReading[]>();
  for (const reading of readings) {
    const key = JSON.stringify([reading.inverter, reading.tracker, reading.roof, reading.what]);
    lines.set(key, [...(lines.get(key) ?? []), reading]);
  }
  const value = ({ expected, low, high }: RecordedReading): Markup =>
    all(
      cellsMarkup(numbers(expected), working),
      low && high ? element("span", { class: "fixed" }, working.number(low), " to ", working.number(high)) : null,
    );
  const rows = [...lines.values()].map((same) => {
    const [{ inverter, tracker, roof, what }] = same as [RecordedReading, ...RecordedReading[]];
    const under = suns.map((sun) => same.filter(({ at }) => at === sun).map(value));
    return [`${inverter} ${tracker}, ${roof}`, what, ...under, element("span", { class: "blank" })];
  });
  return sheet("readings", "Readings at first switch-on", ["string", "what", ...suns, "read"], rows);
}
