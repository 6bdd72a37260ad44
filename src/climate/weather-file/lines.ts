/** Text in pieces of any length, such as a stream yields; a plain text is one piece. */
export type TextChunks = string | Iterable<string> | AsyncIterable<string>;

/** A line of a file and its number, from 1. @internal */
export interface Line {
  readonly text: string;
  readonly number: number;
}

/** The lines of a text that comes in pieces; a piece may end anywhere, also inside a line end. @internal */
export async function* linesOf(chunks: TextChunks): AsyncGenerator<readonly Line[]> {
  let rest = "";
  let number = 0;
  for await (const chunk of typeof chunks === "string" ? [chunks] : chunks) {
    const text = rest + chunk;
    // A carriage return at the end may be half of a line end: it waits for the next piece.
    const end = text.endsWith("\r") ? text.length - 1 : text.length;
    const parts = text.slice(0, end).split(/\r\n|\n|\r/);
    rest = parts.pop()! + text.slice(end);
    yield parts.map((part) => ({ text: part, number: (number += 1) }));
  }
  const last = rest.replace(/\r$/, "");
  if (last !== "") yield [{ text: last, number: number + 1 }];
}
