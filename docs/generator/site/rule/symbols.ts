import type { Constant, ListSymbol, ScalarSymbol } from "../../../../src/formula/index.js";
import type { Domain } from "../../../../src/quantity/index.js";
import { escaped, list, section, table } from "../html.js";
import type { PageLinks } from "../links.js";
import { inlineSymbol } from "../math/symbol.js";
import { citation, term } from "./citations.js";

const unitText = (unit: string): string =>
  unit === "1" || unit === "" ? "–" : escaped(unit).replaceAll(" ", "&nbsp;");
const number = (value: number): string => String(value).replace("-", "−");

/** The values that a symbol may have, and those that are usual. */
export function domainText({ above, from, below, to, usual }: Domain): string {
  const bounds = [
    ...(above === undefined ? [] : [`&gt;&nbsp;${number(above)}`]),
    ...(from === undefined ? [] : [`≥&nbsp;${number(from)}`]),
    ...(below === undefined ? [] : [`&lt;&nbsp;${number(below)}`]),
    ...(to === undefined ? [] : [`≤&nbsp;${number(to)}`]),
  ];
  const hard = bounds.length === 0 ? "any" : bounds.join(", ");
  return usual ? `${hard}<br><small>usual ${number(usual[0])} to ${number(usual[1])}</small>` : hard;
}

/** The table of what a rule takes. */
export function symbolsPart(takes: Readonly<Record<string, ScalarSymbol | ListSymbol>>, links: PageLinks): string {
  const rows = Object.entries(takes).map(([key, symbol]) => [
    inlineSymbol(symbol.symbol),
    term(key, links),
    `${escaped(symbol.about)}${"each" in symbol ? " (a list)" : ""}`,
    unitText("each" in symbol ? symbol.each : symbol.unit),
    domainText(symbol),
  ]);
  return section("Symbols", table(["symbol", "input", "meaning", "unit", "domain"], rows));
}

/** The table of a rule's fixed numbers, each with its own source. */
export function constantsPart(constants: Readonly<Record<string, Constant>>, links: PageLinks): string {
  const rows = Object.values(constants).map(({ value, unit, symbol, about, source }) => [
    inlineSymbol(symbol),
    escaped(`${value}${unit === "1" ? "" : ` ${unit}`}`).replace("-", "−"),
    escaped(about),
    list(source.map((one) => citation(one, links))),
  ]);
  return section("Constants", table(["symbol", "value", "meaning", "source"], rows));
}
