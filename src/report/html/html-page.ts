import { element, type Markup, raw } from "../markup/markup.js";
import { STYLE } from "./style.js";

/** Nothing is loaded and nothing runs: the page is its own text and style. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

/** A whole page around its body. */
export function htmlPage(title: string, body: Markup): string {
  const head = element(
    "head",
    {},
    element("meta", { charset: "utf-8" }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("meta", { "http-equiv": "Content-Security-Policy", content: POLICY }),
    element("meta", { name: "color-scheme", content: "light dark" }),
    element("title", {}, title),
    element("style", {}, raw(STYLE)),
  );
  return `<!doctype html>\n${element("html", { lang: "en-GB" }, head, body).markup}\n`;
}
