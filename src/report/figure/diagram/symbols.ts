import { all, type Markup } from "../../markup/markup.js";
import { circle, group, INK, label, line, path, rect } from "../svg.js";

/**
 * Graphical symbols after IEC 60617, drawn here for a line that runs downwards. Each is centred on `x`, begins at `y` and
 * is `HEIGHT` tall, so that symbols in series join.
 */
export const HEIGHT = 44;
const FILLED = { fill: INK, stroke: "none" } as const;

/** A plain piece of the line. */
export const wire = (x: number, from: number, to: number): Markup => line(x, from, x, to, { "stroke-width": 1.5 });

/** Photovoltaic generator: a square with G and the sign of a cell in the light. */
export function photovoltaicGenerator(x: number, y: number): Markup {
  const side = 38;
  return group(
    { "stroke-width": 1.5 },
    rect(x - side / 2, y, side, side),
    label(x - 9, y + 16, "G", { anchor: "middle", weight: "bold" }),
    // The cell: a long and a short plate, and two rays that strike it.
    line(x - 4, y + 27, x + 12, y + 27),
    line(x, y + 32, x + 8, y + 32, { "stroke-width": 3 }),
    ray(x + 2, y + 10),
    ray(x + 9, y + 8),
    wire(x, y + side, y + HEIGHT),
  );
}

function ray(x: number, y: number): Markup {
  return all(line(x, y, x + 5, y + 11), path(`M${x + 6.5} ${y + 14}l-5 -3l4 -2z`, FILLED));
}

/** Fuse: a rectangle with the line through it. */
export const fuse = (x: number, y: number): Markup =>
  all(wire(x, y, y + HEIGHT), rect(x - 6, y + 9, 12, 26, { "stroke-width": 1.5 }));

/** The blade of a switch: the line, open towards the left. */
function blade(x: number, y: number): Markup {
  return all(wire(x, y, y + 12), line(x - 10, y + 13, x, y + 32, { "stroke-width": 1.5 }), wire(x, y + 32, y + HEIGHT));
}

/** Switch-disconnector: the bar of a disconnector and the circle of a load switch at the fixed contact. */
export function switchDisconnector(x: number, y: number): Markup {
  return group(
    {},
    blade(x, y),
    line(x - 6, y + 9, x + 6, y + 9, { "stroke-width": 1.5 }),
    circle(x, y + 12.5, 3, { "stroke-width": 1.5 }),
  );
}

/** Circuit-breaker: a cross at the fixed contact. */
export function circuitBreaker(x: number, y: number): Markup {
  return group(
    {},
    blade(x, y),
    line(x - 4, y + 7, x + 4, y + 15, { "stroke-width": 1.5 }),
    line(x - 4, y + 15, x + 4, y + 7, { "stroke-width": 1.5 }),
  );
}

/** Residual-current device: a switch, and the core that embraces its conductors. */
export function residualCurrentDevice(x: number, y: number): Markup {
  return group(
    {},
    blade(x, y),
    path(`M${x - 8} ${y + 39}a8 3.5 0 1 0 16 0a8 3.5 0 1 0 -16 0`, { "stroke-width": 1.5 }),
    line(x - 8, y + 39, x - 18, y + 39),
    line(x - 18, y + 39, x - 8, y + 18),
  );
}

const CONVERTER = 44;

/** Inverter: a square with a diagonal, the sign of direct current where it enters and of alternating current where it leaves. */
export function inverter(x: number, y: number): Markup {
  const [left, right] = [x - CONVERTER / 2, x + CONVERTER / 2];
  return group(
    { "stroke-width": 1.5 },
    rect(left, y, CONVERTER, CONVERTER),
    line(left, y + CONVERTER, right, y),
    directCurrent(left + 12, y + 12),
    alternatingCurrent(right - 12, y + 33),
  );
}

/** Sign of direct current: a line above a broken line. */
export const directCurrent = (x: number, y: number): Markup =>
  all(
    line(x - 8, y - 2, x + 8, y - 2, { "stroke-width": 1.5 }),
    line(x - 8, y + 3, x + 8, y + 3, { "stroke-width": 1.5, "stroke-dasharray": "4 2" }),
  );

/** Sign of alternating current: one wave. */
export const alternatingCurrent = (x: number, y: number): Markup =>
  path(`M${x - 9} ${y}c3 -8 6 -8 9 0s6 8 9 0`, { "stroke-width": 1.5 });

/** Meter of active energy. */
export function energyMeter(x: number, y: number): Markup {
  return group(
    { "stroke-width": 1.5 },
    wire(x, y, y + 6),
    rect(x - 18, y + 6, 36, 32),
    line(x - 18, y + 15, x + 18, y + 15),
    label(x, y + 31, "kWh", { anchor: "middle", size: 12 }),
    wire(x, y + 38, y + HEIGHT),
  );
}

/** Earth: a line and three bars that grow shorter. */
export function earth(x: number, y: number): Markup {
  const bars = [12, 8, 4].map((half, row) =>
    line(x - half, y + 12 + row * 5, x + half, y + 12 + row * 5, { "stroke-width": 1.5 }),
  );
  return group({}, wire(x, y, y + 12), bars);
}

/** Surge protective device between the line and earth, beside the line on its left. */
export function surgeDevice(x: number, y: number): Markup {
  const side = x - 34;
  return group(
    { "stroke-width": 1.5 },
    circle(x, y, 2.5, FILLED),
    line(side, y, x, y),
    wire(side, y, y + 8),
    rect(side - 7, y + 8, 14, 26),
    path(`M${side} ${y + 8}v7m-3 -4l3 4l3 -4M${side} ${y + 34}v-7m-3 4l3 -4l3 4`),
    earth(side, y + 34),
  );
}

/** Conductors of a cable: strokes across the line, or one stroke with their number. */
export function conductors(x: number, y: number, count: number): Markup {
  const strokes = count <= 3 ? Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * 6) : [0];
  return group(
    {},
    wire(x, y, y + HEIGHT),
    strokes.map((shift) => line(x - 6, y + 25 + shift, x + 6, y + 18 + shift, { "stroke-width": 1.5 })),
    count > 3 ? label(x - 10, y + 27, String(count), { anchor: "end" }) : null,
  );
}

/** A busbar across the page. */
export const busbar = (from: number, to: number, y: number): Markup => line(from, y, to, y, { "stroke-width": 5 });

/** An arrow at the end of the line: it goes on to the network or to loads. */
export const arrow = (x: number, y: number): Markup =>
  all(wire(x, y, y + 20), path(`M${x - 5} ${y + 16}h10l-5 10z`, FILLED));

/** Enclosure of what belongs to one device. */
export const enclosure = (x: number, y: number, width: number, height: number): Markup =>
  rect(x, y, width, height, { "stroke-dasharray": "9 3 2 3", "stroke-opacity": 0.7 });
