import type { PlantRecord, RecordedNumber } from "../../plant/index.js";
import type { Markup } from "../markup/markup.js";
import { shown, shownPercent, shownText } from "../view/number-text.js";
import { type Scale, scale, spread, ticks } from "./scale.js";
import { ACCENT, circle, figure, type Figure, group, INK, label, line, path, through } from "./svg.js";

const WIDTH = 640;
const LEFT = 56;
const RIGHT = 430;
const TOP = 30;
const BOTTOM = 220;
const HEIGHT = 262;
/** Share of the width for the network, whose length is not known. */
const NETWORK = 0.3;

interface Limit {
  readonly name: string;
  readonly voltage: RecordedNumber;
  readonly met: boolean;
}

interface Point {
  readonly x: number;
  readonly name: string;
  readonly voltage: RecordedNumber;
  readonly totalShare: RecordedNumber | null;
}

/**
 * The voltage from one inverter to the connection point and on through the network, between the limits of its checks.
 *
 * @returns the figure, or `null` where the voltage is not known
 */
export function profileFigure(record: PlantRecord, inverter: string): Figure | null {
  const points = pointsOf(record, inverter);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 2) return null;
  const limits = limitsOf(record, inverter);
  const all = [...points.map(({ voltage }) => voltage), ...limits.map(({ voltage }) => voltage)].map(({ value }) =>
    Number(value),
  );
  const pad = Math.max((Math.max(...all) - Math.min(...all)) * 0.12, 1);
  const range = [Math.min(...all) - pad, Math.max(...all) + pad] as const;
  const y = scale(range, [BOTTOM, TOP]);
  return figure(`Voltage from ${inverter} to the network`, findingOf(inverter, first, last, limits), WIDTH, HEIGHT, [
    axes(y, range, last.x),
    limits.map(({ voltage, met }) =>
      line(LEFT, y(Number(voltage.value)), RIGHT, y(Number(voltage.value)), {
        stroke: met ? INK : ACCENT,
        "stroke-width": 2,
      }),
    ),
    limitNames(limits, y),
    path(through(points.map(({ x, voltage }) => [x, y(Number(voltage.value))])), { "stroke-width": 2.5 }),
    points.map((point, index) => pointMark(point, y, index === 0 ? "start" : "middle")),
  ]);
}

/** The points with their place along the page: inverter at the left, the network at the right. */
function pointsOf(record: PlantRecord, inverter: string): readonly Point[] {
  const own = record.grid.voltageProfile.filter((point) => point.inverter === inverter);
  const lengths = own.map(({ length }) => Number(length?.value ?? 0));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const x = scale([0, total === 0 ? 1 : total], [RIGHT - (RIGHT - LEFT) * NETWORK, LEFT]);
  let gone = 0;
  const placed = own.flatMap(({ name, voltage, totalShare }, index): Point[] => {
    gone += lengths[index]!;
    return voltage ? [{ x: x(gone), name, voltage, totalShare }] : [];
  });
  return placed.reverse();
}

/** Limits on the voltage of this inverter, equal ones once. */
function limitsOf({ grid, checks }: PlantRecord, inverter: string): readonly Limit[] {
  const found = new Map<string, Limit>();
  for (const { name, voltage, check, inverter: of } of grid.limits) {
    if (of !== inverter) continue;
    const met = checks.find(({ id }) => id === check)?.verdict !== "not-met";
    found.set(`${name} ${voltage.value}`, { name, voltage, met });
  }
  return [...found.values()];
}

function findingOf(inverter: string, first: Point, last: Point, limits: readonly Limit[]): string {
  const rise = first.totalShare
    ? `, a rise of ${shownText(shownPercent(first.totalShare))} over the network without the plant`
    : "";
  const above = limits.filter(({ voltage }) => Number(voltage.value) >= Number(first.voltage.value));
  const [next] = above.sort((a, b) => Number(a.voltage.value) - Number(b.voltage.value));
  const limit = next ? `; ${next.name} ${shownText(shown(next.voltage))}` : "";
  return `${shownText(shown(first.voltage))} at ${inverter}, ${shownText(shown(last.voltage))} at ${last.name}${rise}${limit}.`;
}

function axes(y: Scale, range: readonly [number, number], connection: number): Markup {
  return group(
    {},
    line(LEFT, TOP, LEFT, BOTTOM),
    line(LEFT, BOTTOM, RIGHT, BOTTOM),
    ticks(range[0], range[1], 6).map((value) => [
      line(LEFT - 4, y(value), LEFT, y(value)),
      label(LEFT - 8, y(value) + 4, String(value), { anchor: "end" }),
    ]),
    label(LEFT - 8, TOP - 10, "V", { anchor: "end" }),
    line(connection, TOP, connection, BOTTOM, { "stroke-dasharray": "1 3", "stroke-linecap": "round" }),
    label((LEFT + connection) / 2, BOTTOM + 34, "installation, to scale", { anchor: "middle" }),
    label((connection + RIGHT) / 2, BOTTOM + 34, "network", { anchor: "middle" }),
  );
}

function limitNames(limits: readonly Limit[], y: Scale): readonly Markup[] {
  const wanted = limits.map(({ voltage }) => y(Number(voltage.value)) - 8);
  const rows = spread(
    wanted,
    limits.map(() => 17),
    4,
    BOTTOM,
  );
  return limits.map(({ name, voltage, met }, index) =>
    label(RIGHT + 8, rows[index]! + 12, `${met ? "" : "▲ "}${shownText(shown(voltage))}, ${name}`, {
      fill: met ? INK : ACCENT,
    }),
  );
}

function pointMark({ x, name, voltage }: Point, y: Scale, anchor: "start" | "middle"): Markup {
  const at = y(Number(voltage.value));
  return group(
    {},
    circle(x, at, 4, { fill: INK, stroke: "none" }),
    label(anchor === "start" ? x + 6 : x, at - 12, shownText(shown(voltage)), { anchor, weight: "bold" }),
    label(x, BOTTOM + 16, name, { anchor }),
  );
}
