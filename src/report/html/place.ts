import type { PlantRecord } from "../../plant/index.js";
import { ladderFigure } from "../figure/ladder.js";
import { pathFigure } from "../figure/path.js";
import { profileFigure } from "../figure/profile.js";
import type { Figure } from "../figure/svg.js";
import { windowFigure } from "../figure/window.js";
import { element, type Markup, raw } from "../markup/markup.js";
import type { Place } from "../view/places.js";
import { tallyOf } from "../view/places.js";
import { capitalised, term, VERDICTS } from "../view/words.js";
import { checkLine } from "./check-line.js";
import { placeMark } from "./place-mark.js";
import { resultTable } from "./rows.js";
import type { Working } from "./working.js";

/** Which sign the line of the energy bears at a place. */
const LINES = {
  module: "dc", string: "dc", "d.c. route": "dc", inverter: "change", "a.c. route": "ac", board: "ac",
  "connection point": "ac", earth: "earth", plant: "none",
} as const;

/** A figure with its finding under it; a wide one scrolls in its own frame. */
export function figureMarkup({ svg, finding, width }: Figure): Markup {
  return element(
    "figure",
    { class: width > 400 ? "wide" : "narrow" },
    element("div", { class: "frame", tabindex: width > 400 ? "0" : null }, raw(svg)),
    element("figcaption", {}, finding),
  );
}

function figuresOf(record: PlantRecord, place: Place): readonly Figure[] {
  const { kind, string, route } = place;
  const found: (Figure | null)[] = [];
  if (string) found.push(ladderFigure(string), windowFigure(string));
  if (route) found.push(pathFigure(route));
  if (kind === "connection point") found.push(...record.plant.inverters.map(({ name }) => profileFigure(record, name)));
  return found.filter((figure) => figure !== null);
}

/** One place: a short table of results, the figures that belong to it, then its checks. */
export function placeSection(record: PlantRecord, place: Place, working: Working, options: { readonly open: boolean }): Markup {
  const { kind, id, name, rows, checks } = place;
  const figures = figuresOf(record, place);
  return element(
    "article",
    { class: `place ${LINES[kind]}`, id },
    element("div", { class: "mark", "aria-hidden": "true" }, placeMark(kind)),
    element(
      "div",
      { class: "content" },
      element("h3", {}, element("span", { class: "kind" }, `${capitalised(kind === "plant" ? "whole plant" : term(kind, record))} `), kind === "earth" || kind === "plant" ? null : name),
      element("div", { class: "found" }, resultTable(rows, working), figures.map(figureMarkup)),
      checks.length === 0 ? null : element("div", { class: "checks" }, checks.map((check) => checkLine(check, working, options))),
    ),
  );
}

/** The places as an index: each with its checks as a row of shapes, so that a look shows where something is wrong. */
export function placeIndex(places: readonly Place[], record: PlantRecord): Markup {
  return element(
    "nav",
    { class: "walk", "aria-label": "Places" },
    element(
      "ul",
      {},
      places.map(({ id, kind, name, checks }) => {
        const { met, "not-met": notMet, open } = tallyOf(checks);
        const counts = [notMet > 0 && `${notMet} not met`, open > 0 && `${open} open`, `${met} met`].filter((text) => text !== false).join(", ");
        return element(
          "li",
          {},
          element("a", { href: `#${id}` }, `${capitalised(term(kind, record))}${kind === "earth" || kind === "plant" ? "" : ` ${name}`}`),
          " ",
          element("span", { class: "shapes", "aria-hidden": "true" }, checks.map(({ verdict }) => element("span", { class: verdict }, VERDICTS[verdict].shape))),
          " ",
          element("span", { class: "counts" }, checks.length === 0 ? "no checks" : counts),
        );
      }),
    ),
  );
}

