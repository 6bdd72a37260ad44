import type { PlantRecord } from "../../../plant/index.js";
import { counted } from "../../view/words.js";
import { figure, type Figure, label, line } from "../svg.js";
import { alikeInverters, namesText } from "./alike.js";
import { drawColumn, heightOfAll } from "./column.js";
import { supplyParts } from "./parts.js";
import { arrow, earth } from "./symbols.js";
import { boardTree, inverterTree, type Tree } from "./tree.js";

/** A wider diagram is cut: one for each inverter, and one for the boards. */
const WIDEST = 680;
const TOP = 12;
const EARTH_AT = 18;

/** The plant as one line from the modules to the network, in symbols after IEC 60617; what was chosen is underlined. */
export function lineDiagrams(record: PlantRecord): readonly Figure[] {
  const { supply, inverters, name } = record.plant;
  const whole = boardTree(record, supply.at, { strings: true });
  const title = `Single-line diagram of ${name}`;
  if (whole.width <= WIDEST) return [toTheNetwork(record, whole, title, findingOf(record))];
  return [
    ...alikeInverters(record, inverters).map((alike) =>
      alone(
        inverterTree(record, alike, { strings: true }),
        `Single-line diagram of ${namesText(alike.names)}`,
        `${namesText(alike.names)} with ${alike.names.length === 1 ? "its" : "the"} strings and the route to the next board.`,
      ),
    ),
    toTheNetwork(
      record,
      boardTree(record, supply.at, { strings: false }),
      `Single-line diagram of the boards of ${name}`,
      findingOf(record),
    ),
  ];
}

function alone(tree: Tree, title: string, finding: string): Figure {
  const bottom = TOP + tree.height;
  return figure(title, finding, tree.width, bottom + 40, tree.draw(0, bottom), arrow(tree.feed, bottom));
}

function toTheNetwork(record: PlantRecord, tree: Tree, title: string, finding: string): Figure {
  const parts = supplyParts(record);
  const bar = TOP + tree.height;
  const end = bar + heightOfAll(parts);
  const { supply } = record.plant;
  const earthing = supply.earthing === undefined ? "earthing system not stated" : `earth, ${supply.earthing}`;
  const levels = tree.earthed.map((above) => bar - above);
  const first = Math.min(...levels);
  return figure(
    title,
    finding,
    tree.width,
    end + 78,
    tree.draw(0, bar),
    drawColumn(parts, tree.feed, bar, end),
    arrow(tree.feed, end),
    label(tree.feed + 24, end + 18, "network"),
    label(tree.feed + 24, end + 34, record.rules.supply),
    // Earth runs beside the energy, from the frames of the modules to the earthing of the supply.
    line(EARTH_AT, first, EARTH_AT, end + 12, { "stroke-dasharray": "7 3 1 3" }),
    levels.map((y) => line(EARTH_AT, y, EARTH_AT + 14, y, { "stroke-dasharray": "7 3 1 3" })),
    earth(EARTH_AT, end + 12),
    label(4, end + 56, earthing),
  );
}

function findingOf({ plant, strings }: PlantRecord): string {
  const count = strings.reduce((sum, string) => sum + string.count, 0);
  return `${counted(count, "string")} on ${counted(plant.inverters.length, "inverter")}, connected at ${plant.supply.at}.`;
}
