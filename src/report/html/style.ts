import { PRINT } from "./style-print.js";
import { WALK } from "./style-walk.js";

// One ink and its tints, and one accent for what is not met. One size for text, one for headings.
const PAGE = `
:root {
  --paper: #fcfbf7; --ink: #17233c; --not-met: #b3261e; --heading: 1.375rem;
  --tint: color-mix(in srgb, var(--ink) 9%, var(--paper));
  --rule: color-mix(in srgb, var(--ink) 28%, var(--paper));
  --soft: color-mix(in srgb, var(--ink) 72%, var(--paper));
  color-scheme: light dark;
}
@media (prefers-color-scheme: dark) {
  :root { --paper: #131922; --ink: #e4e7ec; --not-met: #ff8f7d; }
}
* { box-sizing: border-box; }
html { background: var(--paper); scroll-padding-top: 1rem; }
body {
  margin: 0 auto; padding: 2rem 1.5rem 6rem; max-width: 80rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", sans-serif;
  font-variant-numeric: tabular-nums lining-nums; overflow-wrap: break-word;
}
h1, h2, h3 { font-size: var(--heading); line-height: 1.25; margin: 0 0 .75rem; text-wrap: balance; }
h1 { font-weight: 750; }
h2 { font-weight: 650; }
h3 { font-weight: 400; }
p { margin: 0 0 .5rem; max-width: 75ch; }
ul, ol { margin: 0 0 .5rem; padding: 0; list-style: none; max-width: 75ch; }
a { color: inherit; text-decoration-thickness: 1px; text-underline-offset: .2em; }
main > section { margin-top: 3.5rem; }
code { font: inherit; background: var(--tint); padding: 0 .25em; overflow-wrap: anywhere; }
var { font-style: italic; }
sub { font-style: normal; font-size: .75em; line-height: 0; }
u { text-underline-offset: .25em; text-decoration-thickness: 2px; }
:focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
.skip { position: absolute; left: -99rem; }
.skip:focus { left: 1rem; top: .5rem; background: var(--paper); padding: .25rem .5rem; }

/* Title block: ruled like the one of a drawing. */
.title-block { border: 2px solid var(--ink); }
.title-block h1 { margin: 0; padding: 1rem 1.25rem; }
.title-block dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(12rem, 1fr)); margin: 0; border-top: 1px solid var(--ink); overflow: hidden; }
.title-block dl > div { padding: .5rem 1.25rem; border: solid var(--rule); border-width: 0 1px 1px 0; margin: 0 -1px -1px 0; }
.title-block dt { color: var(--soft); }
.title-block dd { margin: 0; }
.statements { border-top: 1px solid var(--ink); padding: .5rem 1.25rem; }
.statements summary { cursor: pointer; }
.statements ul { margin: .5rem 0 .25rem; }

/* A number is a button that unfolds its card. */
.n { font: inherit; color: inherit; background: none; border: 0; padding: 0; margin: 0; text-align: inherit; }
button.n { cursor: pointer; text-decoration: underline dotted 1px; text-underline-offset: .25em; text-decoration-color: var(--soft); }
button.n:hover { background: var(--tint); }
.card {
  position: fixed; inset: auto 0 0 0; margin: 0 auto; width: min(100%, 60rem); max-height: 60vh; overflow: auto;
  padding: 1.25rem 3.5rem 1.5rem 1.5rem; border: 2px solid var(--ink); border-bottom: 0; background: var(--paper); color: var(--ink);
  box-shadow: 0 -.5rem 2rem color-mix(in srgb, var(--ink) 22%, transparent);
}
.card .title { font-weight: 650; }
.card .result { overflow-wrap: anywhere; }
.card .uses li { padding-left: 1.25rem; text-indent: -1.25rem; }
.card .uses li::before { content: "– "; }
.card .close { position: absolute; top: .75rem; right: .75rem; font: inherit; font-size: var(--heading); line-height: 1; width: 2rem; height: 2rem; color: inherit; background: none; border: 0; cursor: pointer; }
.equation { font-family: ui-monospace, "Cascadia Mono", "DejaVu Sans Mono", monospace; font-size: .9375em; overflow-wrap: anywhere; }
.equation var { font-family: system-ui, sans-serif; }
.citations li, .grade { color: var(--soft); }

/* Outcome. */
.sentence { font-weight: 650; max-width: 44ch; }
.verdict { white-space: nowrap; font-weight: 650; }
.verdict.not-met { color: var(--not-met); }
.attention { border-left: 4px solid var(--ink); padding: .25rem 0 .25rem 1rem; margin: 0 0 1.25rem; }
.attention.not-met { border-color: var(--not-met); }
.attention.open { border-left-style: double; border-left-width: 6px; }
.attention .at { color: var(--soft); }
.attention p { margin-bottom: .25rem; }
.cautions { border: 2px solid var(--ink); padding: 1rem 1.25rem; margin-top: 2rem; }
main > .cautions { margin-top: 3.5rem; }
.cautions h2 { margin-bottom: .5rem; }
.cautions ul { columns: 2 26rem; column-gap: 2.5rem; max-width: none; }
.cautions li { break-inside: avoid; margin-bottom: .375rem; padding-left: 1.5rem; text-indent: -1.5rem; }
.cautions li::before { content: "!"; font-weight: 750; display: inline-block; width: 1.5rem; text-indent: 0; }
.kind { font-weight: 650; }
.ticks li { padding-left: 1.75rem; position: relative; margin-bottom: .375rem; }
.ticks li::before { content: ""; position: absolute; left: 0; top: .25em; width: 1em; height: 1em; border: 1.5px solid var(--ink); }

.dashes li { padding-left: 1.25rem; text-indent: -1.25rem; }
.dashes li::before { content: "– "; }
.warning { display: block; }
.signature { display: grid; grid-template-columns: repeat(auto-fit, minmax(12rem, 1fr)); gap: 2rem; }
.signature .line { display: block; border-bottom: 1px solid var(--ink); min-height: 3rem; padding-top: 1.25rem; }

/* Sheets. */
.frame { overflow-x: auto; }
table { border-collapse: collapse; }
th { font-weight: 400; text-align: left; vertical-align: top; }
td { vertical-align: top; }
.sheet { width: 100%; }
.sheet th, .sheet td { padding: .375rem 1rem .375rem 0; border-bottom: 1px solid var(--rule); min-width: 7rem; }
.sheet thead th { border-bottom: 2px solid var(--ink); color: var(--soft); }
.sheet .blank { display: block; min-width: 8rem; min-height: 1.5rem; }
dl.grades { display: grid; grid-template-columns: max-content 1fr; gap: .125rem 1rem; margin: 1rem 0 0; }
dl.grades dd { margin: 0; }
figure { margin: 0; }
figure svg { display: block; max-width: 100%; height: auto; overflow: visible; }
figure.wide svg { max-width: none; }
figcaption { color: var(--soft); max-width: 60ch; margin-top: .25rem; }
#line figure { margin-top: 1rem; }
`;

/** The style of the page: screen in light and dark, phone, and A4. */
export const STYLE = `${PAGE}${WALK}${PRINT}`.replace(/\n\s*/g, "\n").trim();
