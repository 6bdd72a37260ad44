import { plainText } from "../view/plain-text.js";

const NUMBER = /^-?\d+(\.\d+)?$/;
const FORMULA = /^[=+\-@\t\r|%]/;

/**
 * A cell as a spreadsheet takes it for text: what it would read as a formula gets an apostrophe before it; a plain number
 * stays a number.
 */
export function csvCell(text: string): string {
  const plain = plainText(text);
  const safe = FORMULA.test(plain.trimStart()) && !NUMBER.test(plain) ? `'${plain}` : plain;
  return /[",;\n\r]/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Lines after RFC 4180: commas between cells, each line ended by carriage return and line feed. */
export function csv(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  return [heads, ...rows].map((cells) => `${cells.map(csvCell).join(",")}\r\n`).join("");
}
