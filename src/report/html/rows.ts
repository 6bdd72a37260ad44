import { all, element, type Markup } from "../markup/markup.js";
import { withSymbols } from "../markup/symbols.js";
import type { Cell, Row } from "../view/cell.js";
import { checkAnchor } from "./check-line.js";
import type { Working } from "./working.js";

export function cellMarkup(cell: Cell, working: Working): Markup {
  switch (cell.kind) {
    case "number":
      return working.number(cell.number, { percent: cell.percent === true });
    case "fact":
      return working.fact(cell);
    case "made":
      return working.made(cell);
    case "words":
      return all(cell.text);
  }
}

export function cellsMarkup(cells: readonly Cell[], working: Working): Markup {
  return all(cells.map((cell, at) => all(at > 0 ? " " : null, cellMarkup(cell, working))));
}

const MOST_ROWS = 9;

/**
 * A short table of results; what the library chose is underlined and says which check fixed it. A long one with room
 * beside it is set in two.
 */
export function resultTables(rows: readonly Row[], working: Working, room: boolean): readonly Markup[] {
  if (rows.length === 0) return [];
  const cut = room && rows.length > MOST_ROWS ? Math.ceil(rows.length / 2) : rows.length;
  const table = (part: readonly Row[]): Markup =>
    element(
      "table",
      { class: "results" },
      element(
        "tbody",
        {},
        part.map((row) => resultRow(row, working)),
      ),
    );
  return cut === rows.length ? [table(rows)] : [table(rows.slice(0, cut)), table(rows.slice(cut))];
}

function resultRow({ label, symbol, cells, chosen, fixedBy = [] }: Row, working: Working): Markup {
  const value = cellsMarkup(cells, working);
  return element(
    "tr",
    {},
    element("th", { scope: "row" }, withSymbols(label), symbol === undefined ? null : all(" ", withSymbols(symbol))),
    element(
      "td",
      { class: chosen === true && "chosen" },
      chosen === true ? element("u", {}, value) : value,
      fixedBy.length > 0 && fixed(fixedBy),
    ),
  );
}

function fixed(ids: readonly string[]): Markup {
  const links = ids.map((id, at) =>
    all(at > 0 ? ", " : null, element("a", { href: `#${checkAnchor(id)}` }, ruleWords(id))),
  );
  return element("span", { class: "fixed" }, " fixed by ", links);
}

/** The rule of a check id in words: `conductor/within-ampacity/A-B` is “within ampacity”. */
export function ruleWords(id: string): string {
  return (id.split("/")[1] ?? id).replaceAll("-", " ").replace(/\bmpp\b/g, "MPP");
}
