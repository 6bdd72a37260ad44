import { type Attribute, type Child, element, type Markup } from "../markup/markup.js";
import { symbolParts } from "../markup/symbols.js";

/** A figure that stands alone, with the sentence that says what it shows. */
export interface Figure {
  readonly title: string;
  /** The finding in words, for those who do not see the figure. */
  readonly finding: string;
  /** A whole SVG document. */
  readonly svg: string;
  readonly width: number;
}

/** Colour of what is not met; a page may set its own. */
export const ACCENT = "var(--not-met, #b3261e)";
export const INK = "currentColor";
const PAPER = "var(--paper, #fff)";
export const LETTERING = 13;

type Attributes = Readonly<Record<string, Attribute>>;

/** A coordinate with one decimal, so that every engine prints the same. */
export const at = (value: number): number => Math.round(value * 10) / 10;

export const group = (attributes: Attributes, ...children: readonly Child[]): Markup =>
  element("g", attributes, ...children);

export function line(x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): Markup {
  return element("line", { x1: at(x1), y1: at(y1), x2: at(x2), y2: at(y2), ...attributes });
}

export function rect(x: number, y: number, width: number, height: number, attributes: Attributes = {}): Markup {
  return element("rect", { x: at(x), y: at(y), width: at(width), height: at(height), ...attributes });
}

export function circle(cx: number, cy: number, r: number, attributes: Attributes = {}): Markup {
  return element("circle", { cx: at(cx), cy: at(cy), r: at(r), ...attributes });
}

export function path(d: string, attributes: Attributes = {}): Markup {
  return element("path", { d, ...attributes });
}

/** Points as the `d` of an open path. */
export function through(points: readonly (readonly [number, number])[]): string {
  return points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${at(x)} ${at(y)}`).join("");
}

interface Lettering {
  readonly anchor?: "start" | "middle" | "end";
  readonly weight?: "bold";
  readonly fill?: string;
  /** Underlined: the library chose it. */
  readonly chosen?: boolean;
  readonly size?: number;
}

const SUBSCRIPT = 0.75;
const DROP = 3;

/** Lettering with its symbols set as symbols, on a halo of paper so that lines behind it do not cross it out. */
export function label(
  x: number,
  y: number,
  text: string,
  { anchor, weight, fill = INK, chosen, size = LETTERING }: Lettering = {},
): Markup {
  let lowered = false;
  const parts = symbolParts(text).map(({ text: words, kind }) => {
    const shift = (kind === "subscript") === lowered ? undefined : lowered ? -DROP : DROP;
    lowered = kind === "subscript";
    return element(
      "tspan",
      {
        "font-style": kind === "symbol" ? "italic" : undefined,
        "font-size": kind === "subscript" ? Math.round(size * SUBSCRIPT) : undefined,
        dy: shift,
      },
      words,
    );
  });
  return element(
    "text",
    {
      x: at(x),
      y: at(y),
      fill,
      "text-anchor": anchor,
      "font-weight": weight,
      "font-size": size === LETTERING ? undefined : size,
      "text-decoration": chosen === true ? "underline" : undefined,
      stroke: PAPER,
      "stroke-width": 3,
      "stroke-linejoin": "round",
      "paint-order": "stroke",
    },
    parts,
  );
}

/** Approximate width of lettering; wide enough for every system font. */
export function widthOf(text: string, size = LETTERING): number {
  return text.length * size * 0.56;
}

/** Puts the parts of a figure into one document. */
export function figure(
  title: string,
  finding: string,
  width: number,
  height: number,
  ...parts: readonly Child[]
): Figure {
  const { markup: svg } = element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${at(width)} ${at(height)}`,
      width: at(width),
      height: at(height),
      role: "img",
      "aria-label": `${title}: ${finding}`,
      "font-family": "system-ui, sans-serif",
      "font-size": LETTERING,
      "font-variant-numeric": "tabular-nums",
      fill: "none",
      stroke: INK,
      "stroke-width": 1,
    },
    ...parts,
  );
  return { title, finding, svg, width };
}
