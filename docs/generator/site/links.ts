import type { Knowledge } from "./knowledge.js";

/** What a page needs beside the rule that it shows: what is known, and where other pages are from here. */
export interface PageLinks {
  readonly knowledge: Knowledge;
  /** Address of the page of a rule; `null` where it has none. */
  readonly rule: (id: string) => string | null;
  readonly document: (name: "Glossary" | "Sources") => string;
  /** Rules of the same folder of the sources, such as the other voltage drops. */
  readonly neighbours: (id: string) => readonly string[];
}

/** A place within a page, from any text. */
export function anchorOf(text: string): string {
  return text
    .toLowerCase()
    .normalize("NFKD")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}
