import { plainText } from "../view/plain-text.js";

/** Wraps words into lines: the first begins with a head, the others hang below its text. */
export function hung(head: string, text: string, width: number, indent = head.length): readonly string[] {
  const lines: string[] = [];
  let line = head;
  let empty = true;
  for (const word of plainText(text).split(" ")) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = " ".repeat(indent);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}
