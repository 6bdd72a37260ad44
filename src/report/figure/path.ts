import type { RecordedNumber, RecordedRoute } from "../../plant/index.js";
import type { Markup } from "../markup/markup.js";
import { shown, shownPercent, shownText } from "../view/number-text.js";
import { type Scale, scale, ticks } from "./scale.js";
import { ACCENT, figure, type Figure, group, INK, label, line, path, rect, through, widthOf } from "./svg.js";

const WIDTH = 640;
const LEFT = 56;
const RIGHT = 624;
const CHANGE = { top: 40, bottom: 120 } as const;
const LOAD = { top: 160, bottom: 270 } as const;
const HEIGHT = 318;
const ROOM_ABOVE = 1.25;

interface Stretch {
  readonly place: string;
  readonly from: number;
  readonly to: number;
  readonly length: RecordedNumber;
  readonly ampacity: RecordedNumber | null;
}

/**
 * The path of one route, length to scale: above, how the voltage changes along it; below, its current against what the
 * cable carries, stretch by stretch.
 *
 * @returns the figure, or `null` where the current is not known
 */
export function pathFigure(route: RecordedRoute): Figure | null {
  const { current, length } = route;
  if (!current) return null;
  const x = scale([0, Number(length.value)], [LEFT, RIGHT]);
  const stretches = stretchesOf(route, x);
  return figure(`Path from ${route.from} to ${route.to}`, findingOf(route, current), WIDTH, HEIGHT, [
    label(LEFT, 16, route.from, { weight: "bold" }),
    label(RIGHT, 16, route.to, { weight: "bold", anchor: "end" }),
    changePanel(route, x),
    loadPanel(stretches, current),
  ]);
}

function stretchesOf({ stretches }: RecordedRoute, x: Scale): readonly Stretch[] {
  let gone = 0;
  return stretches.map(({ place, length, ampacity }) => {
    const from = x(gone);
    gone += Number(length.value);
    return { place, from, to: x(gone), length, ampacity };
  });
}

function findingOf(route: RecordedRoute, current: RecordedNumber): string {
  const { ampacity, length, voltageChange, voltageChangeShare, kind } = route;
  const text = (number: RecordedNumber): string => shownText(shown(number));
  const carried = ampacity
    ? `; the cable carries ${text(ampacity)} where it carries least`
    : "; what the cable carries is not known";
  const word = kind === "d.c." ? "drop" : "rise";
  const share = voltageChangeShare ? `, ${shownText(shownPercent(voltageChangeShare))}` : "";
  const change = voltageChange ? `; the voltage ${word} is ${text(voltageChange)}${share}` : "";
  return `${text(current)} along ${text(length)}${carried}${change}.`;
}

function changePanel(route: RecordedRoute, x: Scale): Markup {
  const { voltageChange, voltageChangeShare, kind } = route;
  const word = kind === "d.c." ? "drop along the way" : "rise above the far end";
  if (!voltageChange) return label(LEFT, CHANGE.top + 20, `voltage ${word}: not known`);
  const total = Number(voltageChange.value);
  const y = scale([0, Math.max(total * ROOM_ABOVE, 0.1)], [CHANGE.bottom, CHANGE.top]);
  const course = courseOf(route, total).map(([metres, volts]): [number, number] => [x(metres), y(volts)]);
  const share = voltageChangeShare ? ` = ${shownText(shownPercent(voltageChangeShare))}` : "";
  const value = `ΔU ${shownText(shown(voltageChange))}${share}`;
  return group(
    {},
    axis(y, Math.max(total * ROOM_ABOVE, 0.1), CHANGE, "V"),
    path(`${through([...course, [RIGHT, y(0)], [LEFT, y(0)]])}Z`, { fill: INK, "fill-opacity": 0.16, stroke: "none" }),
    path(through(course), { "stroke-width": 2 }),
    label(
      kind === "d.c." ? RIGHT : LEFT + 6,
      y(total) - 8,
      value,
      kind === "d.c." ? { anchor: "end", weight: "bold" } : { weight: "bold" },
    ),
    label((LEFT + RIGHT) / 2, CHANGE.top - 8, word, { anchor: "middle" }),
  );
}

/** Where along the way the voltage has changed by how much; straight where its stretches do not say. */
function courseOf(
  { stretches, kind, length }: RecordedRoute,
  total: number,
): readonly (readonly [metres: number, volts: number])[] {
  const ends: (readonly [number, number])[] = [[0, 0]];
  let [metres, volts] = [0, 0];
  for (const stretch of stretches) {
    if (!stretch.change) {
      ends.splice(1, ends.length, [Number(length.value), total]);
      break;
    }
    metres += Number(stretch.length.value);
    volts += Number(stretch.change.value);
    ends.push([metres, volts]);
  }
  // A drop grows from the string on; a rise is largest at the inverter and gone at the far end.
  return kind === "d.c." ? ends : ends.map(([at, gone]) => [at, total - gone]);
}

function loadPanel(stretches: readonly Stretch[], current: RecordedNumber): Markup {
  const amperes = Number(current.value);
  const most = Math.max(amperes, ...stretches.map(({ ampacity }) => Number(ampacity?.value ?? 0))) * ROOM_ABOVE;
  const y = scale([0, most], [LOAD.bottom, LOAD.top]);
  return group(
    {},
    axis(y, most, LOAD, "A"),
    stretches.map((stretch) => stretchBlock(stretch, amperes, y)),
    line(LEFT, y(amperes), RIGHT, y(amperes), { "stroke-width": 2.5 }),
    label(LEFT + 6, y(amperes) + 16, `current ${shownText(shown(current))}`, { weight: "bold" }),
  );
}

function stretchBlock({ from, to, place, length, ampacity }: Stretch, amperes: number, y: Scale): Markup {
  const middle = (from + to) / 2;
  const carries = ampacity ? Number(ampacity.value) : null;
  const passed = carries !== null && amperes > carries;
  const stroke = passed ? ACCENT : INK;
  const name = `${place}, ${shownText(shown(length))}`;
  const fits = widthOf(name) < to - from;
  const value = ampacity ? `${passed ? "▲ " : ""}I_z ${shownText(shown(ampacity))}` : "I_z not known";
  return group(
    {},
    carries === null
      ? null
      : rect(from, y(carries), to - from, LOAD.bottom - y(carries), { fill: INK, "fill-opacity": 0.1, stroke: "none" }),
    carries === null
      ? null
      : line(from, y(carries), to, y(carries), { stroke, "stroke-width": 2, "stroke-dasharray": "6 3" }),
    label(middle, y(carries ?? 0) - 7, value, { anchor: "middle", fill: stroke }),
    line(to, LOAD.top, to, LOAD.bottom + 6, { "stroke-opacity": 0.5 }),
    label(middle, LOAD.bottom + (fits ? 18 : 34), fits ? name : shownText(shown(length)), { anchor: "middle" }),
  );
}

function axis(
  y: Scale,
  most: number,
  { top, bottom }: { readonly top: number; readonly bottom: number },
  unit: string,
): Markup {
  return group(
    {},
    line(LEFT, top, LEFT, bottom),
    line(LEFT, bottom, RIGHT, bottom),
    ticks(0, most, 3).map((value) => [
      line(LEFT - 4, y(value), LEFT, y(value)),
      label(LEFT - 8, y(value) + 4, String(value), { anchor: "end" }),
    ]),
    label(LEFT - 8, top - 8, unit, { anchor: "end" }),
  );
}
