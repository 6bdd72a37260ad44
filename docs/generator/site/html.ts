/** Text as HTML shows it. */
export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** A head and what follows it; nothing where nothing follows. */
export function section(head: string, body: string): string {
  return body === "" ? "" : `<section class="part"><h4>${head}</h4>${body}</section>`;
}

/** A table that scrolls by itself on a narrow screen; cells are HTML. Nothing without rows. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return "";
  const line = (tag: "th" | "td", cells: readonly string[]): string =>
    `<tr>${cells.map((cell) => `<${tag}>${cell}</${tag}>`).join("")}</tr>`;
  const body = rows.map((cells) => line("td", cells)).join("");
  return `<div class="scrolls"><table><thead>${line("th", heads)}</thead><tbody>${body}</tbody></table></div>`;
}

/** A list of HTML items; nothing without items. */
export function list(items: readonly string[]): string {
  return items.length === 0 ? "" : `<ul>${items.map((item) => `<li>${item}</li>`).join("")}</ul>`;
}

/** A grade as a small mark. */
export function gradeMark(grade: string | null): string {
  return grade === null
    ? ""
    : `<span class="grade grade-${grade}">${grade === "common-practice" ? "common practice, no source" : grade}</span>`;
}

/** A sentence from text that starts lower-case. */
export function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${/[.?!]$/.test(text) ? "" : "."}`;
}

/** A name of code; long ones may break at capitals and underscores. */
export function code(name: string): string {
  return `<code>${escaped(name).replace(/(?<=[a-z0-9])(?=[A-Z_/])/g, "<wbr>")}</code>`;
}
