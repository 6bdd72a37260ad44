import type { PlantRecord } from "../../plant/index.js";
import { element, type Markup } from "../markup/markup.js";
import { statements } from "../view/description.js";
import type { ReportOptions } from "../view/options.js";

/** The title block: plant, rules with editions, version, who stated what; a date only where the caller gives one. */
export function titleBlock(record: PlantRecord, { date, by }: ReportOptions): Markup {
  const { plant, rules, library } = record;
  const cell = (label: string, text: string | undefined): Markup | null =>
    text === undefined ? null : element("div", {}, element("dt", {}, label), element("dd", {}, text));
  const said = statements(record);
  return element(
    "header",
    { class: "title-block" },
    element("h1", {}, plant.name),
    element(
      "dl",
      {},
      cell("wiring", rules.wiring),
      cell("array", rules.pv),
      cell("connection", rules.grid),
      cell("supply", rules.supply),
      cell("sized with", `pv-to-grid ${library}`),
      cell("presented by", by),
      cell("date", date),
    ),
    said.length === 0
      ? null
      : element(
          "details",
          { class: "statements" },
          element("summary", {}, "Who stated what"),
          element(
            "ul",
            {},
            said.map(({ what, statedIn }) => element("li", {}, `${what}: ${statedIn}`)),
          ),
        ),
  );
}
