import type { PlantRecord } from "../../plant/index.js";
import { alikeInverters } from "../figure/diagram/alike.js";
import { ladderFigure } from "../figure/ladder.js";
import { pathFigure } from "../figure/path.js";
import { profileFigure } from "../figure/profile.js";
import type { Figure } from "../figure/svg.js";
import { windowFigure } from "../figure/window.js";
import { element, type Markup, raw } from "../markup/markup.js";
import { type Place, placeHead, placeName, tallyOf } from "../view/places.js";
import { VERDICTS } from "../view/words.js";
import { checkLine } from "./check-line.js";
import { placeMark } from "./place-mark.js";
import { resultTables } from "./rows.js";
import type { Working } from "./working.js";

/** Which sign the line of the energy bears at a place. */
const LINES = {
  module: "dc",
  string: "dc",
  "d.c. route": "dc",
  inverter: "change",
  "a.c. route": "ac",
  board: "ac",
  "connection point": "ac",
  earth: "earth",
  plant: "none",
} as const;

const WIDE = 400;

/** A figure with its finding under it; a wide one scrolls in its own frame. */
export function figureMarkup({ svg, finding, width }: Figure): Markup {
  return element(
    "figure",
    { class: width > WIDE ? "wide" : "narrow", style: width > WIDE ? null : `max-width:${width}px` },
    element("div", { class: "frame", tabindex: width > WIDE ? "0" : null }, raw(svg)),
    element("figcaption", {}, finding),
  );
}

function figuresOf(record: PlantRecord, { kind, string, route }: Place): readonly Markup[] {
  const shown = (found: readonly (Figure | null)[]): readonly Markup[] =>
    found.filter((figure) => figure !== null).map(figureMarkup);
  if (string) return [element("div", { class: "pair" }, shown([ladderFigure(string), windowFigure(string)]))];
  if (route) return shown([pathFigure(route)]);
  return kind === "connection point"
    ? shown(alikeInverters(record, record.plant.inverters).map(({ inverter }) => profileFigure(record, inverter.name)))
    : [];
}

/** What the figures of a string show; strings of which it is the same share them. */
function drawnBy({ string }: Place): string | null {
  if (!string) return null;
  const { modules, coldVoltage, hotVoltage, voltages, limits } = string;
  return JSON.stringify([modules, coldVoltage, hotVoltage, voltages, limits]);
}

/** The first of the places whose figures would be the same; the place itself where it is the first. */
function drawnAt(places: readonly Place[], place: Place): Place {
  const own = drawnBy(place);
  return own === null ? place : places.find((other) => drawnBy(other) === own)!;
}

/** One place: a short table of results, the figures that belong to it, then its checks. */
export function placeSection(
  record: PlantRecord,
  places: readonly Place[],
  place: Place,
  working: Working,
  options: { readonly open: boolean },
): Markup {
  const { kind, id, rows, checks } = place;
  const first = drawnAt(places, place);
  const figures =
    first === place
      ? figuresOf(record, place)
      : [
          element(
            "p",
            {},
            "Its voltages are those of the ",
            element("a", { href: `#${first.id}` }, `${first.kind} ${first.name}`),
            ".",
          ),
        ];
  return element(
    "article",
    { class: `place ${LINES[kind]}`, id },
    element("div", { class: "mark", "aria-hidden": "true" }, placeMark(kind)),
    element(
      "div",
      { class: "content" },
      element("h3", {}, element("span", { class: "kind" }, placeHead(place, record)), placeName(place)),
      element("div", { class: "found" }, resultTables(rows, working, figures.length === 0), figures),
      checks.length === 0
        ? null
        : element(
            "div",
            { class: "checks" },
            checks.map((check) => checkLine(check, working, options)),
          ),
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
      places.map((place) => {
        const { id, checks } = place;
        const { met, "not-met": notMet, open } = tallyOf(checks);
        const counts = [notMet > 0 && `${notMet} not met`, open > 0 && `${open} open`, `${met} met`]
          .filter((text) => text !== false)
          .join(", ");
        return element(
          "li",
          {},
          element("a", { href: `#${id}` }, `${placeHead(place, record)}${placeName(place)}`),
          " ",
          element(
            "span",
            { class: "shapes", "aria-hidden": "true" },
            checks.map(({ verdict }) => element("span", { class: verdict }, VERDICTS[verdict].shape)),
          ),
          " ",
          element("span", { class: "counts" }, checks.length === 0 ? "no checks" : counts),
        );
      }),
    ),
  );
}
