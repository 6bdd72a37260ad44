import type { Rule } from "../../../../src/catalogue/index.js";
import { bestGrade } from "../../../../src/source/index.js";
import { code, escaped, gradeMark, list, section } from "../html.js";
import type { PageLinks } from "../links.js";
import { inlineSymbol } from "../math/symbol.js";
import { publication, ruleLink } from "./citations.js";

type Table = Extract<Rule, { readonly kind: "table" }>;

const ROW_RULES = {
  exact: "only the rows that are printed",
  "next above": "the next row above where a value lies between two rows",
  "next below": "the next row below where a value lies between two rows",
  between: "interpolated linearly between the two rows beside a value",
} as const;

/** The cells of a table as printed, with the grade of those held otherwise and a mark at those that nothing guards. */
export function cellsPart(rule: Table, links: PageLinks): string {
  const { declaration } = rule;
  const whole = bestGrade(declaration.source);
  const unguarded = new Set(links.knowledge.unguardedOf(rule.id));
  const columns = columnValues(declaration.columns ?? {});
  const cells = new Map(rule.cells().map((cell) => [[cell.row, ...cell.column].join(" | "), cell]));
  const body = rule.rows().map((name) => {
    const shown = columns.map((column) => {
      const place = [name, ...column].join(" | ");
      const cell = cells.get(place);
      if (cell === undefined) return "<td>–</td>";
      const grade = cell.grade === whole || cell.grade === null ? "" : ` <small>${gradeMark(cell.grade)}</small>`;
      const open =
        unguarded.has(place.replace(/ \| $/, "")) || unguarded.has(name)
          ? ' class="unguarded" title="no second publication, law or example guards this cell"'
          : "";
      return `<td${open}>${escaped(cell.text)}${grade}</td>`;
    });
    return `<tr><th scope="row">${escaped(name)}</th>${shown.join("")}</tr>`;
  });
  const grid = `<div class="scrolls"><table class="cells"><thead>${heads(declaration, columns)}</thead><tbody>${body.join("")}</tbody></table></div>`;
  const { gives } = declaration;
  const unit = "unit" in gives ? (gives.unit === "1" ? "" : ` in ${escaped(gives.unit)}`) : `: ${escaped(gives.names)}`;
  const legend =
    unguarded.size === 0 ? "" : ` Dotted cells (${unguarded.size}) are guarded by nothing but their own transcription.`;
  return section(
    "Table",
    `<p>${inlineSymbol(gives.symbol)}${unit}; ${ROW_RULES[declaration.rowRule]}.${legend}</p>${grid}${list([...base(declaration), ...guards(rule, links)])}`,
  );
}

function columnValues(columns: Readonly<Record<string, readonly string[]>>): readonly (readonly string[])[] {
  return Object.values(columns).reduce<readonly (readonly string[])[]>(
    (found, values) => found.flatMap((start) => values.map((value) => [...start, value])),
    [[]],
  );
}

// One line of heads a heading; a value spans the columns below it.
function heads({ rows, columns = {}, gives }: Table["declaration"], leaves: readonly (readonly string[])[]): string {
  const corner = `${code(rows.name)}${"unit" in rows && rows.unit !== "1" ? ` in ${escaped(rows.unit)}` : ""}`;
  const names = Object.keys(columns);
  if (names.length === 0) return `<tr><th>${corner}</th><th>${inlineSymbol(gives.symbol)}</th></tr>`;
  return names
    .map((name, level) => {
      const spans: { value: string; width: number; path: string }[] = [];
      for (const leaf of leaves) {
        const path = leaf.slice(0, level + 1).join(" | ");
        const last = spans.at(-1);
        if (last?.path === path) last.width += 1;
        else spans.push({ value: leaf[level]!, width: 1, path });
      }
      const first =
        level === names.length - 1
          ? `${corner} <span class="axis">\\ ${code(name)}</span>`
          : `<span class="axis">${code(name)}</span>`;
      return `<tr><th>${first}</th>${spans.map(({ value, width }) => `<th${width > 1 ? ` colspan="${width}"` : ""}>${escaped(value)}</th>`).join("")}</tr>`;
    })
    .join("");
}

function base({ base: conditions = {} }: Table["declaration"]): readonly string[] {
  const parts = Object.entries(conditions).map(([name, value]) => `${escaped(name)} ${escaped(value)}`);
  return parts.length === 0 ? [] : [`Base: ${parts.join(", ")}; a factor of another base is refused.`];
}

function guards({ id }: Table, links: PageLinks): readonly string[] {
  const lines = links.knowledge
    .guardsOf(id)
    .map(
      (guard) =>
        `Guarded by ${guard.by === "copy" ? "a copy" : `the law ${ruleLink(guard.rule, links)}`}: ${publication(guard.seen.in, links)}, ${escaped(guard.seen.place)} ${gradeMark(guard.seen.grade)}`,
    );
  return [...new Set(lines)];
}
