import { all, element, type Markup } from "./markup.js";

export interface SymbolPart {
  readonly text: string;
  readonly kind: "plain" | "symbol" | "subscript";
}

/** A letter or a word, an underscore, then the subscript. */
const SYMBOL = /(\p{L}+)_([\p{L}\p{N}]+(?:[,.][\p{L}\p{N}]+)*)/gu;

/** Cuts a line into plain text, symbols and their subscripts: `U_OC` is U with the subscript OC. */
export function symbolParts(text: string): readonly SymbolPart[] {
  const parts: SymbolPart[] = [];
  let from = 0;
  for (const match of text.matchAll(SYMBOL)) {
    if (match.index > from) parts.push({ text: text.slice(from, match.index), kind: "plain" });
    parts.push({ text: match[1]!, kind: "symbol" }, { text: match[2]!, kind: "subscript" });
    from = match.index + match[0].length;
  }
  if (from < text.length) parts.push({ text: text.slice(from), kind: "plain" });
  return parts;
}

/** A line with its symbols set as symbols, for HTML. */
export function withSymbols(text: string): Markup {
  const parts = symbolParts(text);
  return all(
    parts.map((part, at) => {
      if (part.kind === "plain") return part.text;
      if (part.kind === "subscript") return null;
      return element("var", {}, part.text, element("sub", {}, parts[at + 1]!.text));
    }),
  );
}
