import type { Markup } from "../../markup/markup.js";
import { group, label, widthOf } from "../svg.js";
import { HEIGHT, wire } from "./symbols.js";

/** Lettering beside a symbol; what the library chose is underlined. */
export interface Note {
  readonly text: string;
  readonly chosen?: boolean;
  readonly weight?: "bold";
}

/** One symbol on a line that runs downwards, with the lettering to its right. */
export interface Part {
  readonly draw: (x: number, y: number) => Markup;
  readonly notes: readonly Note[];
}

const LINE_HEIGHT = 16;
const SIDE = 24;
const GAP = 8;

export const noteAt = (x: number, y: number, { text, chosen, weight }: Note): Markup =>
  label(x, y, text, { ...(chosen === undefined ? {} : { chosen }), ...(weight === undefined ? {} : { weight }) });

/** Height that a part takes: its symbol, or its lettering where that is taller. */
export function heightOf({ notes }: Part): number {
  return Math.max(HEIGHT, notes.length * LINE_HEIGHT) + GAP;
}

export function heightOfAll(parts: readonly Part[]): number {
  return parts.reduce((sum, part) => sum + heightOf(part), 0);
}

/** Draws parts in series, from `y` downwards, and the line on to `end`. */
export function drawColumn(parts: readonly Part[], x: number, y: number, end: number): Markup {
  let at = y;
  const drawn = parts.map((part) => {
    const height = heightOf(part);
    const first = at + (HEIGHT - part.notes.length * LINE_HEIGHT) / 2 + LINE_HEIGHT - 4;
    const piece = group(
      {},
      part.draw(x, at),
      height > HEIGHT ? wire(x, at + HEIGHT, at + height) : null,
      part.notes.map((note, row) => noteAt(x + SIDE, Math.max(first, at + 12) + row * LINE_HEIGHT, note)),
    );
    at += height;
    return piece;
  });
  return group({}, drawn, end > at ? wire(x, at, end) : null);
}

/** Width that a column needs for its lettering. */
export function columnWidth(parts: readonly Part[], least: number): number {
  const widest = Math.max(0, ...parts.flatMap(({ notes }) => notes.map(({ text }) => widthOf(text))));
  return Math.max(least, SIDE + widest + 16);
}

/** Cuts a text into lines of about `most` letters, at spaces. */
export function wrapped(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word.length > most * 2 ? `${word.slice(0, most * 2 - 1)}…` : word);
  }
  return lines;
}
