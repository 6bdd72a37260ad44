import type { Case } from "../../../../src/evidence/index.js";
import { code, escaped, gradeMark, section, table } from "../html.js";
import type { KnownCase } from "../knowledge.js";
import type { PageLinks } from "../links.js";
import { inlineSymbol } from "../math/symbol.js";
import { publication } from "./citations.js";

const LONGEST = 12;
const WORDS: Readonly<Record<string, string>> = {
  proven: "Proven: published examples would notice a shift of each symbol.",
  partly: "Partly proven: published examples would notice a shift of some symbols, but not of ",
  unproven: "Unproven by published examples",
};

/** Which published values the rule reproduces, and with what share of the printed tolerance. */
export function evidencePart(id: string, links: PageLinks): string {
  const { knowledge } = links;
  const proof = knowledge.proofOf(id);
  const cases = knowledge.casesOf(id);
  const state = proof === undefined ? "" : `<p>${stateText(proof)}</p>`;
  const symbolOf = symbolsOf(id, links);
  const rows = cases.map((known) => caseRow(known, symbolOf, links));
  const heads = ["example", "inputs", "printed", "computed", "share of tolerance", "counts"];
  const none = proof === undefined && rows.length === 0;
  return section("Published cases", none ? "" : `${state}${table(heads, rows)}`);
}

function stateText(proof: {
  readonly state: string;
  readonly unnoticed: readonly string[];
  readonly because: string | null;
}): string {
  const words = WORDS[proof.state] ?? proof.state;
  const because = proof.because === null ? "" : `: ${escaped(proof.because)}`;
  if (proof.state === "partly") return `${words}${proof.unnoticed.map(code).join(", ")}${because}.`;
  return proof.state === "proven" ? words : `${words}${because}.`;
}

/** The printed symbol of an input; its key where the rule has none for it. */
function symbolsOf(id: string, { knowledge }: PageLinks): (key: string) => string {
  const rule = knowledge.catalogue.rules.get(id);
  const takes = rule && "takes" in rule.declaration ? rule.declaration.takes : {};
  return (key) => (takes[key] === undefined ? code(key) : `${inlineSymbol(takes[key].symbol)} =`);
}

function caseRow(
  { case: one, found }: KnownCase,
  symbolOf: (key: string) => string,
  links: PageLinks,
): readonly string[] {
  const { printed, unit, rounding } = one.expected;
  return [
    `${publication(one.seen.in, links)}, ${escaped(one.seen.place)} ${gradeMark(one.seen.grade)}`,
    inputsText(one, symbolOf),
    `${escaped(`${printed} ${unit}`.trim())}${rounding === "nearest" ? "" : ` <small>(${rounding})</small>`}`,
    escaped(short(found?.computed ?? "–")),
    found?.share ?? "–",
    countsText(one, found),
  ];
}

function countsText(one: Case, found: KnownCase["found"]): string {
  if (found === undefined) return "not yet audited";
  if (found.notCounting === null) return "yes";
  return `no: ${escaped(found.notCounting)}${one.erratum === null ? "" : ", see below"}`;
}

function inputsText({ inputs }: Case, symbolOf: (key: string) => string): string {
  return Object.entries(inputs)
    .map(([key, input]) => {
      const value = "printed" in input ? input.printed : input.unprinted;
      const text = Array.isArray(value) ? value.join("; ") : String(value);
      return `${symbolOf(key)} ${escaped(text)}${"printed" in input ? "" : " <small>(not printed)</small>"}`;
    })
    .join("<br>");
}

function short(text: string): string {
  return text.length > LONGEST && /^-?\d+\.\d+$/.test(text) ? `${text.slice(0, LONGEST)}…` : text;
}
