import { busbar, earth, energyMeter, inverter, photovoltaicGenerator } from "../figure/diagram/symbols.js";
import { conductors } from "../figure/diagram/symbols.js";
import { line } from "../figure/svg.js";
import { element, type Markup } from "../markup/markup.js";
import type { PlaceKind } from "../view/places.js";

const SIZE = 44;
const MIDDLE = SIZE / 2;

function drawn(kind: PlaceKind): Markup | readonly Markup[] | null {
  switch (kind) {
    case "module":
      return photovoltaicGenerator(MIDDLE, 0);
    case "string":
      return [8, 20, 32]
        .map((y) => [
          line(MIDDLE - 12, y, MIDDLE + 12, y, { "stroke-width": 1.5 }),
          line(MIDDLE - 6, y + 5, MIDDLE + 6, y + 5, { "stroke-width": 3 }),
        ])
        .flat();
    case "d.c. route":
      return conductors(MIDDLE, 0, 2);
    case "inverter":
      return inverter(MIDDLE, 0);
    case "a.c. route":
      return conductors(MIDDLE, 0, 3);
    case "board":
      return busbar(2, SIZE - 2, MIDDLE);
    case "connection point":
      return energyMeter(MIDDLE, 0);
    case "earth":
      return earth(MIDDLE, 6);
    case "plant":
      return null;
  }
}

/** The symbol of a place, on the line of the energy. */
export function placeMark(kind: PlaceKind): Markup | null {
  const symbol = drawn(kind);
  if (symbol === null) return null;
  const attributes = {
    viewBox: `-1 -1 ${SIZE + 2} ${SIZE + 2}`,
    width: SIZE,
    height: SIZE,
    fill: "none",
    stroke: "currentColor",
    "stroke-width": 1,
    "font-family": "system-ui, sans-serif",
  };
  return element("svg", attributes, symbol);
}
