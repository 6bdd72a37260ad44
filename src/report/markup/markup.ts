import { plainText } from "../view/plain-text.js";

/** Markup that is safe to put into a page: everything of a user in it has been escaped. */
export interface Markup {
  readonly markup: string;
}

type Child = Markup | string | number | null | undefined | false | readonly Child[];
type Attribute = string | number | true | null | undefined | false;

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text as HTML and SVG print it. */
export function escaped(text: string): string {
  return plainText(text).replace(/[&<>"']/g, (sign) => ESCAPES[sign]!);
}

/** Markup as it is; for constants of this folder only. */
export const raw = (markup: string): Markup => ({ markup });

function printed(child: Child): string {
  if (child === null || child === undefined || child === false) return "";
  if (typeof child === "string") return escaped(child);
  if (typeof child === "number") return String(child);
  if ("markup" in child) return child.markup;
  return child.map(printed).join("");
}

/** Several pieces of markup or text, one after the other. */
export const all = (...children: readonly Child[]): Markup => ({ markup: printed(children) });

const VOID = new Set(["br", "hr", "meta", "link", "input", "col"]);
const ALONE_IN_SVG = new Set(["path", "line", "rect", "circle", "polyline", "polygon", "use"]);

/** One element; attributes and children are escaped here and nowhere else. */
export function element(
  name: string,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: readonly Child[]
): Markup {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null && value !== undefined && value !== false)
    .map(([key, value]) => (value === true ? ` ${key}` : ` ${key}="${escaped(String(value))}"`))
    .join("");
  if (VOID.has(name)) return { markup: `<${name}${written}>` };
  if (ALONE_IN_SVG.has(name) && children.length === 0) return { markup: `<${name}${written}/>` };
  return { markup: `<${name}${written}>${printed(children)}</${name}>` };
}

export type { Attribute, Child };
