import type { RecordedNumber, RecordedString, RecordedVoltages } from "../../plant/index.js";
import type { Markup } from "../markup/markup.js";
import { shown, shownText } from "../view/number-text.js";
import { nameOf, PLOT } from "./ladder.js";
import { type Scale, scale, ticks } from "./scale.js";
import { type Rung, rungsOf, topVolts } from "./string-limits.js";
import { ACCENT, figure, type Figure, group, INK, label, line, path, through } from "./svg.js";

const WIDTH = 290;
const LEFT = 46;
const RIGHT = 276;
const BEYOND = 6;

type Point = readonly [temperature: number, volts: number];

/**
 * The voltages of a string over cell temperature, between the limits, with the design temperatures as verticals.
 *
 * @returns the figure, or `null` where fewer than two temperatures are known
 */
export function windowFigure(string: RecordedString): Figure | null {
  const known = string.voltages;
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last || known.length < 2) return null;
  const temperatures = known.map(({ cellTemperature }) => Number(cellTemperature.value));
  const x = scale([Math.min(...temperatures) - BEYOND, Math.max(...temperatures) + BEYOND], [LEFT, RIGHT]);
  const y = scale([0, topVolts(string)], [PLOT.bottom, PLOT.top]);
  const open = curve(known, ({ openCircuit }) => openCircuit);
  const power = curve(known, ({ mpp }) => mpp);
  return figure(
    `Voltages over cell temperature, ${nameOf(string)}`,
    findingOf(first, last),
    WIDTH,
    PLOT.height,
    axes(x, y, temperatures, topVolts(string)),
    rungsOf(string)
      .filter(({ volts }) => volts <= topVolts(string))
      .map((rung) => limitLine(rung, y, open, power)),
    [first, last].map(({ cellTemperature }) => vertical(cellTemperature, x)),
    band(open, power, x, y),
    named(open, "U_OC", x, y, -8),
    named(power, "U_MPP", x, y, 18),
  );
}

function curve(
  known: readonly RecordedVoltages[],
  of: (found: RecordedVoltages) => RecordedNumber | null,
): readonly Point[] {
  return known.flatMap((found): Point[] => {
    const volts = of(found);
    return volts ? [[Number(found.cellTemperature.value), Number(volts.value)]] : [];
  });
}

function findingOf(cold: RecordedVoltages, hot: RecordedVoltages): string {
  const text = (number: RecordedNumber): string => shownText(shown(number));
  const range = cold.mpp && hot.mpp ? `, at maximum power from ${text(cold.mpp)} to ${text(hot.mpp)}` : "";
  return `From ${text(cold.cellTemperature)} to ${text(hot.cellTemperature)} the open-circuit voltage falls from ${text(cold.openCircuit)} to ${text(hot.openCircuit)}${range}.`;
}

function axes(x: Scale, y: Scale, temperatures: readonly number[], top: number): Markup {
  const inside = ticks(Math.min(...temperatures), Math.max(...temperatures), 4);
  return group(
    {},
    line(LEFT, PLOT.bottom, RIGHT, PLOT.bottom),
    line(LEFT, PLOT.top, LEFT, PLOT.bottom),
    ticks(0, top, 5).map((volts) => [
      line(LEFT - 4, y(volts), LEFT, y(volts)),
      label(LEFT - 8, y(volts) + 4, String(volts), { anchor: "end" }),
    ]),
    inside.map((temperature) => [
      line(x(temperature), PLOT.bottom, x(temperature), PLOT.bottom + 4),
      label(x(temperature), PLOT.bottom + 18, String(temperature).replace("-", "−"), { anchor: "middle" }),
    ]),
    label(RIGHT, PLOT.bottom + 34, "cell temperature in °C", { anchor: "end" }),
    label(4, PLOT.top - 8, "V"),
  );
}

function limitLine({ volts, required, end }: Rung, y: Scale, open: readonly Point[], power: readonly Point[]): Markup {
  const passed = end === "longest" ? required && open.some(([, at]) => at > volts) : power.some(([, at]) => at < volts);
  return line(LEFT, y(volts), RIGHT, y(volts), {
    stroke: passed ? ACCENT : INK,
    "stroke-width": required ? 2 : 1,
    "stroke-dasharray": required ? undefined : "5 3",
  });
}

function vertical(temperature: RecordedNumber, x: Scale): Markup {
  const at = x(Number(temperature.value));
  return group(
    {},
    line(at, PLOT.top, at, PLOT.bottom, {
      "stroke-opacity": 0.5,
      "stroke-dasharray": "1 3",
      "stroke-linecap": "round",
    }),
    label(at, PLOT.top - 8, shownText(shown(temperature)), { anchor: "middle" }),
  );
}

function band(open: readonly Point[], power: readonly Point[], x: Scale, y: Scale): Markup {
  const placed = (points: readonly Point[]): [number, number][] => points.map(([t, v]) => [x(t), y(v)]);
  const area = power.length > 1 ? `${through([...placed(open), ...placed(power).reverse()])}Z` : "";
  return group(
    {},
    area === "" ? null : path(area, { fill: INK, "fill-opacity": 0.16, stroke: "none" }),
    path(through(placed(open)), { "stroke-width": 2 }),
    power.length > 1 ? path(through(placed(power)), { "stroke-width": 2 }) : null,
  );
}

function named(points: readonly Point[], name: string, x: Scale, y: Scale, above: number): Markup | null {
  const middle = points[Math.floor(points.length / 2)];
  return middle ? label(x(middle[0]) + 4, y(middle[1]) + above, name) : null;
}
