import type { Problem } from "../../quantity/index.js";
import { problem } from "./read-sheet.js";

/** A line of a table of text, with its number in the file. */
export interface CsvLine {
  readonly number: number;
  readonly cells: readonly string[];
}

/** Splits separated values into lines and cells; quotes may hold separators, line ends and doubled quotes. */
export function csvLines(text: string, separator: "," | ";", problems: Problem[]): readonly CsvLine[] {
  const lines: CsvLine[] = [];
  let cells: string[] = [];
  let cell = "";
  let quoted = false;
  let number = 1;
  let begun = 1;
  const endCell = (): void => {
    cells.push(cell.trim());
    cell = "";
  };
  const endLine = (): void => {
    endCell();
    if (cells.some((each) => each !== "")) lines.push({ number: begun, cells });
    cells = [];
    begun = number + 1;
  };
  for (let at = 0; at < text.length; at += 1) {
    const character = text[at]!;
    if (quoted) {
      if (character === "\n") number += 1;
      if (character !== '"') cell += character;
      else if (text[at + 1] === '"') {
        cell += '"';
        at += 1;
      } else quoted = false;
    } else if (character === '"' && cell.trim() === "") {
      cell = "";
      quoted = true;
    } else if (character === separator) endCell();
    else if (character === "\n") {
      endLine();
      number += 1;
    } else if (character !== "\r") cell += character;
  }
  if (quoted)
    problems.push(
      problem(`line ${begun}`, "not-readable", "a quote is opened and not closed", "a closing quote", cell),
    );
  endLine();
  return lines;
}

/** A cell of separated values, quoted where it must be; text that a spreadsheet would take for a formula is disarmed. */
export function csvCell(text: string): string {
  const safe = /^[=+@\t\r]|^-(?![\d.])/.test(text) ? `'${text}` : text;
  return /[",;\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
