import { nearestName } from "./nearest-name.js";
import { type Unit, units } from "./units.js";

let spellings: Map<string, Unit> | undefined;

// NFKC folds what fonts and PDF copies vary: superscripts, the Ohm sign, the degree-Celsius sign, thin spaces.
function folded(text: string): string {
  return text
    .normalize("NFKC")
    .replace(/[⋅∙]/g, "·")
    .replace(/\u03a9/g, "Ω")
    .replace(/\s+/g, " ")
    .trim();
}

function allSpellings(): Map<string, Unit> {
  if (spellings) return spellings;
  spellings = new Map();
  for (const [unit, row] of Object.entries(units) as [Unit, readonly string[]][]) {
    spellings.set(folded(unit), unit);
    for (const other of row.slice(2)) if (other !== "pi" && other !== "pi-below") spellings.set(folded(other), unit);
  }
  return spellings;
}

/** The unit that a text spells, in its symbol or its ASCII form; `undefined` for anything else. */
export function unitFromText(text: string): Unit | undefined {
  return allSpellings().get(folded(text));
}

/** The spelling nearest to an unknown one, for the error message. */
export function nearestUnit(text: string): string | undefined {
  return nearestName(folded(text), [...allSpellings().keys()]);
}

/** ASCII spelling of a unit, for keyboards and plain files. */
export function asciiUnit(unit: Unit): string {
  const row: readonly string[] = units[unit];
  return row.slice(2).find((other) => /^[\x20-\x7e]+$/.test(other) && !other.startsWith("pi")) ?? unit;
}
