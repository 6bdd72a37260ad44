import type { PlantRecord } from "../../plant/index.js";
import { lineDiagrams } from "../figure/diagram/line-diagram.js";
import { element, type Markup } from "../markup/markup.js";
import type { ReportOptions } from "../view/options.js";
import { placesOf } from "../view/places.js";
import { cautions, outcomeSection, toDoSection } from "./outcome.js";
import { figureMarkup, placeIndex, placeSection } from "./place.js";
import { assumptionsSection, materialSection, readingsSection, settingsSheet, sourcesSection } from "./sheets.js";
import { htmlPage } from "./html-page.js";
import { titleBlock } from "./title-block.js";
import { makeWorking } from "./working.js";

/**
 * The whole report as one HTML file that needs no network and runs no script; the same record gives the same bytes.
 *
 * @param record - a sizing record
 * @param options - a date, a presenter, an allowance on cables; `working: "open"` unfolds every working for print
 * @returns the page
 * @example
 * ```ts
 * import { reportHtml } from "pv-to-grid/report";
 * import { sizePlant } from "pv-to-grid";
 * reportHtml(sizePlant(plant)).startsWith("<!doctype html>"); // true
 * ```
 */
export function reportHtml(record: PlantRecord, options: ReportOptions = {}): string {
  const working = makeWorking(record);
  const open = options.working === "open";
  const places = placesOf(record);
  const body = element(
    "body",
    { class: open && "working-open" },
    element("a", { class: "skip", href: "#outcome" }, "Skip to the outcome"),
    titleBlock(record, options),
    element(
      "main",
      {},
      outcomeSection(record),
      toDoSection(record),
      diagramSection(record),
      element(
        "section",
        { id: "places" },
        element("h2", {}, "From the module to the grid"),
        placeIndex(places, record),
        places.map((place) => placeSection(record, places, place, working, { open })),
      ),
      settingsSheet(record, working),
      readingsSection(record, working),
      materialSection(record, working, options),
      sourcesSection(record),
      assumptionsSection(record, working),
      cautions(record.cautions, "cautions-again"),
    ),
    workingSection(record, working.cards()),
  );
  return htmlPage(`${record.plant.name}: sizing report`, body);
}

function diagramSection(record: PlantRecord): Markup {
  const { chosen } = record;
  const legend =
    chosen.length === 0
      ? "Everything was stated and verified."
      : "What is underlined was chosen; what is plain was stated and verified.";
  return element(
    "section",
    { id: "line" },
    element("h2", {}, "The plant as one line"),
    element("p", {}, legend),
    lineDiagrams(record).map(figureMarkup),
  );
}

function workingSection({ steps }: PlantRecord, cards: Markup): Markup {
  const text = steps
    ? "Each number of this report unfolds to its working: press it."
    : "This record was made without its working; size the plant again with it to unfold each number.";
  return element("footer", { id: "working" }, element("h2", {}, "Working"), element("p", {}, text), cards);
}
