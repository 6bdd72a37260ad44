import type { RecordedString } from "../../plant/index.js";
import type { Markup } from "../markup/markup.js";
import { difference, shown, shownText } from "../view/number-text.js";
import { extremes, type Rung, rungsOf, type StringVoltages, temperatureOf, topVolts } from "./string-limits.js";
import { type Scale, scale, spread } from "./scale.js";
import { ACCENT, figure, type Figure, group, INK, label, LETTERING, line, rect } from "./svg.js";

/** Height and top of the plot; the window beside it has the same, so that its limits run on from the rungs. */
export const PLOT = { height: 380, top: 24, bottom: 340 } as const;
const WIDTH = 356;
const RUNG = { from: 165, to: 251 } as const;
const BAR = { at: 207, width: 26 } as const;
const NAMES_FROM = RUNG.to + 10;
const LINE_HEIGHT = 16;

/**
 * The ladder of a string: volts upwards, limits as rungs, the string as a bar from its lowest to its highest voltage.
 *
 * @returns the figure, or `null` where a voltage is not known
 */
export function ladderFigure(string: RecordedString): Figure | null {
  const found = extremes(string);
  if (!found) return null;
  const top = topVolts(string);
  const y = scale([0, top], [PLOT.bottom, PLOT.top]);
  const rungs = rungsOf(string).filter(({ volts }) => volts <= top);
  const beyond = rungsOf(string).filter(({ volts }) => volts > top);
  return figure(
    `Voltages of ${nameOf(string)}`,
    ladderFinding(string, found),
    WIDTH,
    PLOT.height,
    beyond.map(({ voltage, names }, row) =>
      label(RUNG.from, 12 + row * LINE_HEIGHT, `↑ ${shownText(shown(voltage))}, ${names.join(", ")}`),
    ),
    line(RUNG.from, y(0), RUNG.to, y(0)),
    label(RUNG.from - 8, y(0) + 4, "0 V", { anchor: "end" }),
    rungs.map((rung) => rungLine(rung, y, found)),
    rungNames(rungs, y, found),
    margins(rungs, found, y),
    bar(string, found, y),
  );
}

export function nameOf({ inverter, tracker, roof }: RecordedString): string {
  return `the string from ${roof} on ${inverter} ${tracker}`;
}

/** What the ladder shows, in a sentence. */
export function ladderFinding(string: RecordedString, { cold, hot }: StringVoltages): string {
  const coldest = temperatureOf(string, "coldest");
  const hottest = temperatureOf(string, "hottest");
  const rungs = rungsOf(string);
  const ceiling = nearest(rungs, "longest", cold.value);
  const floor = nearest(rungs, "shortest", hot.value);
  const at = (temperature: typeof coldest): string => (temperature ? ` at ${shownText(shown(temperature))}` : "");
  const above = ceiling
    ? `, ${spare(ceiling.voltage.value, cold.value, "below", "above")} the limit of ${shownText(shown(ceiling.voltage))}`
    : "";
  const below = floor
    ? `, ${spare(hot.value, floor.voltage.value, "above", "below")} the lower end of ${shownText(shown(floor.voltage))}`
    : "";
  return `${string.modules} modules reach ${shownText(shown(cold))}${at(coldest)}${above}; they work at ${shownText(shown(hot))}${at(hottest)}${below}.`;
}

function spare(larger: string, smaller: string, fits: string, exceeds: string): string {
  const volts = difference(larger, smaller);
  const text = shownText(shown({ value: volts.replace(/^-/, ""), unit: "V" }));
  return `${text} ${volts.startsWith("-") ? exceeds : fits}`;
}

/** The limit that the string meets first on one side. */
function nearest(rungs: readonly Rung[], end: Rung["end"], from: string): Rung | undefined {
  const side = rungs.filter((rung) => rung.end === end && (end === "shortest" || rung.required));
  const gap = ({ volts }: Rung): number => (end === "longest" ? volts - Number(from) : Number(from) - volts);
  return [...side].sort((a, b) => gap(a) - gap(b))[0];
}

function isPassed({ end, volts, required }: Rung, { cold, hot }: StringVoltages): boolean {
  return end === "longest" ? required && Number(cold.value) > volts : Number(hot.value) < volts;
}

function rungLine(rung: Rung, y: Scale, found: StringVoltages): Markup {
  const stroke = isPassed(rung, found) ? ACCENT : INK;
  return line(RUNG.from, y(rung.volts), RUNG.to, y(rung.volts), {
    stroke,
    "stroke-width": rung.required ? 2 : 1,
    "stroke-dasharray": rung.required ? undefined : "5 3",
  });
}

function rungNames(rungs: readonly Rung[], y: Scale, found: StringVoltages): readonly Markup[] {
  const lines = rungs.map(({ voltage, names }) => [shownText(shown(voltage)), ...names]);
  const sizes = lines.map(({ length }) => length * LINE_HEIGHT + 6);
  const tops = spread(
    rungs.map(({ volts }) => y(volts) - LINE_HEIGHT / 2),
    sizes,
    2,
    PLOT.bottom - 6,
  );
  return rungs.map((rung, index) => {
    const passed = isPassed(rung, found);
    const first = tops[index]! + LETTERING - 1;
    const fill = passed ? ACCENT : INK;
    return group(
      {},
      line(RUNG.from - 14, first - 4, RUNG.from, y(rung.volts), { stroke: fill, "stroke-opacity": passed ? 1 : 0.5 }),
      lines[index]!.map((text, row) =>
        label(RUNG.from - 18, first + row * LINE_HEIGHT, passed && row === 0 ? `▲ ${text}` : text, {
          anchor: "end",
          fill,
          ...(row === 0 ? { weight: "bold" as const } : {}),
        }),
      ),
    );
  });
}

function bar(string: RecordedString, { cold, hot }: StringVoltages, y: Scale): Markup {
  const top = y(Number(cold.value));
  const bottom = y(Number(hot.value));
  const left = BAR.at - BAR.width / 2;
  const right = BAR.at + BAR.width / 2;
  const standard = string.voltages.find(({ at }) => at === "standard test conditions")?.mpp ?? null;
  const wanted = [top, ...(standard ? [y(Number(standard.value))] : []), bottom];
  const rows = spread(
    wanted.map((at) => at - LINE_HEIGHT),
    wanted.map(() => 2 * LINE_HEIGHT + 4),
    PLOT.top - LINE_HEIGHT,
    PLOT.bottom,
  );
  const named = (row: number, number: typeof cold, where: string): Markup => {
    const at = rows[row]! + LETTERING - 1;
    return group(
      {},
      line(right, wanted[row]!, NAMES_FROM - 4, rows[row]! + LINE_HEIGHT - 6, { "stroke-opacity": 0.5 }),
      label(NAMES_FROM, at, shownText(shown(number)), { weight: "bold" }),
      label(NAMES_FROM, at + LINE_HEIGHT, where),
    );
  };
  const cell = (at: string): string => {
    const temperature = temperatureOf(string, at);
    return temperature ? ` at ${shownText(shown(temperature))}` : "";
  };
  return group(
    {},
    rect(left, top, BAR.width, bottom - top, { fill: INK, "fill-opacity": 0.16, "stroke-width": 1.5 }),
    standard && line(left, y(Number(standard.value)), right, y(Number(standard.value)), { "stroke-width": 2 }),
    named(0, cold, `U_OC${cell("coldest")}`),
    standard && named(1, standard, "U_MPP at 25 °C"),
    named(wanted.length - 1, hot, `U_MPP${cell("hottest")}`),
  );
}

/** The room that is left above and below, as dimension lines with their volts. */
function margins(rungs: readonly Rung[], { cold, hot }: StringVoltages, y: Scale): readonly (Markup | null)[] {
  const ceiling = nearest(rungs, "longest", cold.value);
  const floor = nearest(rungs, "shortest", hot.value);
  const dimension = (from: string, to: string): Markup | null => {
    const [high, low] = [Math.max(Number(from), Number(to)), Math.min(Number(from), Number(to))];
    const middle = (y(high) + y(low)) / 2;
    if (y(low) - y(high) < LINE_HEIGHT) return null;
    const volts = shownText(shown({ value: difference(to, from).replace(/^-/, ""), unit: "V" }));
    return group(
      {},
      line(BAR.at, y(high) + 2, BAR.at, y(low) - 2, { "stroke-dasharray": "1 3", "stroke-linecap": "round" }),
      label(BAR.at, middle + 4, volts, { anchor: "middle" }),
    );
  };
  return [
    ceiling ? dimension(cold.value, ceiling.voltage.value) : null,
    floor ? dimension(floor.voltage.value, hot.value) : null,
  ];
}
