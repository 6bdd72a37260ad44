/** Expressions that the browser evaluates in the page; text, since the sources know no document. */

export const WIDTH = "document.documentElement.scrollWidth";

export const FOCUSED = "document.activeElement.textContent";

export const ORPHANS = `
  [...document.querySelectorAll("button[popovertarget]")]
    .filter((button) => !document.getElementById(button.getAttribute("popovertarget"))?.matches("[popover]")).length`;

export interface Structure {
  readonly heads: readonly number[];
  readonly figures: number;
  readonly nameless: number;
  readonly language: string;
}

export const STRUCTURE = `({
  heads: [...document.querySelectorAll("h1, h2, h3")].map((head) => Number(head.tagName[1])),
  figures: [...document.querySelectorAll("figure svg")].filter((svg) => svg.getAttribute("role") !== "img" || !svg.getAttribute("aria-label")).length,
  nameless: [...document.querySelectorAll("button, summary, a")].filter((item) => item.textContent === "" && !item.getAttribute("aria-label")).length,
  language: document.documentElement.lang,
})`;

/** Lowest contrast of text and paper, after WCAG; a canvas turns every way of writing a colour into red, green and blue. */
export const LOWEST_CONTRAST = `(() => {
  const brush = document.createElement("canvas").getContext("2d", { willReadFrequently: true });
  const light = (colour) => {
    brush.fillStyle = colour;
    brush.fillRect(0, 0, 1, 1);
    const [r, g, b] = [...brush.getImageData(0, 0, 1, 1).data]
      .map((byte) => (byte / 255 <= 0.03928 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const paper = light(getComputedStyle(document.body).backgroundColor);
  return Math.min(...[...document.querySelectorAll("p, th, td, dt, dd, .clause, .verdict, figcaption, .counts")].map((item) => {
    const ink = light(getComputedStyle(item).color);
    return (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05);
  }));
})()`;

/** Size of the smallest equation that stands on a line of its own. */
export const SMALLEST_EQUATION = `(() => {
  const boxes = [...document.querySelectorAll('math[display="block"]')].map((math) => math.getBoundingClientRect());
  return { width: Math.min(...boxes.map((box) => box.width)), height: Math.min(...boxes.map((box) => box.height)) };
})()`;
