import type { PlantRecord } from "../../../plant/index.js";
import type { Markup } from "../../markup/markup.js";
import { group, label, line } from "../svg.js";
import { type Alike, alikeInverters, namesText } from "./alike.js";
import { columnWidth, drawColumn, heightOfAll, noteAt, type Part, wrapped } from "./column.js";
import { acRouteParts, stringParts } from "./parts.js";
import {
  busbar,
  enclosure,
  HEIGHT,
  inverter as inverterSymbol,
  surgeDevice,
  switchDisconnector,
  wire,
} from "./symbols.js";

/** A part of the diagram that ends in one line at its bottom. */
export interface Tree {
  readonly width: number;
  readonly height: number;
  /** Draws it with its left edge at `x` and its bottom at `bottom`; `feed` is where its line leaves. */
  readonly draw: (x: number, bottom: number) => Markup;
  readonly feed: number;
  /** Heights above the bottom at which something is to be earthed. */
  readonly earthed: readonly number[];
}

export const EDGE = 80;
const COLUMN = 140;
const INVERTER_HEIGHT = 150;
const BUSBAR_ROOM = 34;

type Inverter = PlantRecord["plant"]["inverters"][number];

/** An inverter with its strings above it and its route to the next board below. */
export function inverterTree(
  record: PlantRecord,
  { inverter, names }: Alike,
  { strings: withStrings }: { readonly strings: boolean },
): Tree {
  const strings = withStrings ? record.strings.filter((string) => string.inverter === inverter.name) : [];
  const columns = strings.map((string) => ({ parts: stringParts(record, string), tracker: string.tracker }));
  const widths = columns.map(({ parts }) => columnWidth(parts, COLUMN));
  const above = Math.max(0, ...columns.map(({ parts }) => heightOfAll(parts)));
  const route = record.routes.find(({ kind, from }) => kind === "a.c." && from === inverter.name);
  const below = route ? acRouteParts(record, route, inverter.phases) : [];
  const width =
    EDGE +
    Math.max(
      widths.reduce((sum, each) => sum + each, 0),
      columnWidth(below, COLUMN),
      250,
    );
  const height = above + INVERTER_HEIGHT + heightOfAll(below);
  const draw = (x: number, bottom: number): Markup => {
    const top = bottom - height;
    const places = widths.map((_, index) => x + EDGE + widths.slice(0, index).reduce((sum, each) => sum + each, 0));
    const box = top + above;
    return group(
      {},
      columns.map(({ parts }, index) => drawColumn(parts, places[index]!, box - heightOfAll(parts), box)),
      inverterBox(
        inverter,
        names,
        columns.map(({ tracker }) => tracker),
        places,
        x,
        box,
        width,
      ),
      drawColumn(below, x + EDGE, box + INVERTER_HEIGHT, bottom),
    );
  };
  const generators = columns.length > 0 ? [height - 20] : [];
  return { width, height, draw, feed: EDGE, earthed: [...generators, heightOfAll(below) + INVERTER_HEIGHT - 40] };
}

/** The inverter in its enclosure: trackers, built-in switch and surge protection, and the symbol itself. */
function inverterBox(
  inverter: Inverter,
  names: readonly string[],
  trackers: readonly string[],
  places: readonly number[],
  x: number,
  y: number,
  width: number,
): Markup {
  const feed = x + EDGE;
  const [first = feed] = places;
  const last = places.at(-1) ?? feed;
  const builtIn = inverter.dcSwitch === "built in" && places.length > 0;
  const bar = y + (places.length > 0 ? 14 + HEIGHT + 12 : 0);
  const converter = y + 84;
  const surge = inverter.surgeProtection;
  const protectedBy = (kind: string | undefined): boolean => kind !== undefined && kind !== "none";
  const each = names.length > 1 ? " each" : "";
  const notes = [...wrapped(namesText(names), 24), `${inverter.apparentPower}${each}`];
  return group(
    {},
    enclosure(x + 4, y + 4, width - 14, INVERTER_HEIGHT - 12),
    places.map((place, index) => [
      wire(place, y, y + 14),
      builtIn ? switchDisconnector(place, y + 14) : wire(place, y + 14, y + 14 + HEIGHT),
      wire(place, y + 14 + HEIGHT, bar),
      label(place + 8, y + 20, trackers[index]!, { weight: "bold" }),
    ]),
    places.length > 1 ? line(first, bar, last, bar, { "stroke-width": 1.5 }) : null,
    wire(feed, places.length > 0 ? bar : converter, converter),
    protectedBy(surge?.dc) && places.length > 0 ? surgeDevice(feed, bar + 2) : null,
    inverterSymbol(feed, converter),
    wire(feed, converter + HEIGHT, y + INVERTER_HEIGHT),
    notes.map((text, row) =>
      noteAt(feed + 34, converter + 16 + row * 16, row === 0 ? { text, weight: "bold" } : { text }),
    ),
    builtIn ? noteAt(feed + 34, converter + 16 + notes.length * 16, { text: "d.c. switch built in" }) : null,
  );
}

/** A board with all that feeds it above, and, where it is not the last one, its route to the next board below. */
export function boardTree(record: PlantRecord, name: string, options: { readonly strings: boolean }): Tree {
  const { plant, routes } = record;
  const board = plant.boards?.find((known) => known.name === name);
  const feeders = routes.filter(({ kind, to }) => kind === "a.c." && to === name);
  const feeding = plant.inverters.filter((inverter) => feeders.some(({ from }) => from === inverter.name));
  const boards = feeders.filter(({ from }) => from !== name && feeding.every((inverter) => inverter.name !== from));
  const children = [
    ...alikeInverters(record, feeding).map((alike) => inverterTree(record, alike, options)),
    ...boards.map(({ from }) => boardTree(record, from, options)),
  ];
  const onward = routes.find(({ kind, from }) => kind === "a.c." && from === name);
  const phases = Math.max(1, ...plant.inverters.map((inverter) => inverter.phases));
  const below: readonly Part[] = onward && name !== plant.supply.at ? acRouteParts(record, onward, phases) : [];
  const width = Math.max(
    children.reduce((sum, child) => sum + child.width, 0),
    300,
  );
  const tallest = Math.max(0, ...children.map((child) => child.height));
  const height = tallest + BUSBAR_ROOM + heightOfAll(below);
  const offsets = children.map((_, index) => children.slice(0, index).reduce((sum, child) => sum + child.width, 0));
  const feed = children[0]?.feed ?? EDGE;
  const draw = (x: number, bottom: number): Markup => {
    const bar = bottom - heightOfAll(below) - BUSBAR_ROOM;
    const last = Math.max(x + feed + 190, ...children.map((child, index) => x + offsets[index]! + child.feed + 20));
    const rating = board?.busbarRating === undefined ? "" : `, busbar ${board.busbarRating}`;
    return group(
      {},
      children.map((child, index) => child.draw(x + offsets[index]!, bar)),
      busbar(x + feed - 30, last, bar),
      wrapped(`${name}${rating}`, 28).map((text, row) =>
        noteAt(x + feed + 24, bar + 19 + row * 16, row === 0 ? { text, weight: "bold" } : { text }),
      ),
      wire(x + feed, bar, bar + BUSBAR_ROOM),
      drawColumn(below, x + feed, bar + BUSBAR_ROOM, bottom),
    );
  };
  const own = heightOfAll(below) + BUSBAR_ROOM;
  const earthed = children[0]?.earthed.map((at) => at + own) ?? [];
  return { width, height, draw, feed, earthed: [...earthed, own - 10] };
}
