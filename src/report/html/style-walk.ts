/** The walk from the module to the grid: the line of the energy in the left margin, its places, and their checks. */
export const WALK = `
.walk ul { max-width: none; margin-bottom: 2.5rem; }
.walk li { display: grid; grid-template-columns: minmax(12rem, 22rem) 1fr auto; gap: 0 1.5rem; padding: .25rem 0; border-bottom: 1px solid var(--rule); align-items: baseline; }
.walk .shapes { letter-spacing: .15em; line-height: 1.2; }
.walk .counts { color: var(--soft); }
.shapes .not-met { color: var(--not-met); }

.place { display: grid; grid-template-columns: 4.5rem minmax(0, 1fr); }
.place .content { padding-bottom: 3rem; min-width: 0; }
.place h3 { padding-top: .375rem; }
.place h3 .kind { font-weight: 650; }
.mark { position: relative; }
.mark svg { position: relative; z-index: 1; display: block; background: var(--paper); padding: 2px 0; }
/* Direct current: a line beside a broken line, the sign of IEC 60617 turned along the way. */
.mark::before { content: ""; position: absolute; top: 0; bottom: 0; left: 19px; width: 7px; }
.dc .mark::before, .change .mark::before { border-left: 2px solid var(--ink); border-right: 2px dashed var(--ink); }
.change .mark::before { bottom: auto; height: 22px; }
/* Alternating current: waves along the way. */
.ac .mark::after, .change .mark::after {
  content: ""; position: absolute; top: 0; bottom: 0; left: 16px; width: 14px; background: var(--ink);
  -webkit-mask: url("data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='14' height='28'%3E%3Cpath d='M7 0c8 5 8 9 0 14s-8 9 0 14' fill='none' stroke='black' stroke-width='2'/%3E%3C/svg%3E") repeat-y;
  mask: url("data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg' width='14' height='28'%3E%3Cpath d='M7 0c8 5 8 9 0 14s-8 9 0 14' fill='none' stroke='black' stroke-width='2'/%3E%3C/svg%3E") repeat-y;
}
.change .mark::after { top: 46px; }
.earth .mark::before { border-left: 2px dotted var(--ink); left: 22px; }

.found { display: flex; flex-wrap: wrap; gap: 1.5rem 2.5rem; align-items: flex-start; margin-bottom: 1rem; }
.results th, .results td { padding: .125rem 0; }
.results th { padding-right: 1.5rem; color: var(--soft); max-width: 17rem; }
@media (min-width: 40rem) { .results th { width: 15rem; } }
.fixed { display: block; color: var(--soft); }
.found > .results { flex: 1 1 24rem; max-width: 34rem; }
.found > figure { min-width: 0; }
.pair { display: flex; gap: 1.5rem; }

.check { border-top: 1px solid var(--rule); }
.checks { border-bottom: 1px solid var(--rule); }
.check > summary {
  display: grid; grid-template-columns: 5.5rem minmax(0, 1fr) minmax(9rem, 12.5rem) 7rem minmax(0, 12rem); gap: 0 1rem;
  padding: .375rem 0; cursor: pointer; list-style: none; align-items: baseline;
}
.check > summary::-webkit-details-marker { display: none; }
.check > summary:hover { background: var(--tint); }
.check .asks::after { content: " +"; color: var(--soft); }
.check[open] .asks::after { content: " –"; }
.check .force, .check .clause, .check .unknown, .check .relation { color: var(--soft); }
.check .grade { font-style: italic; display: block; }
.aside { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.use { position: relative; display: flex; align-items: center; gap: .5rem; }
.bar { position: relative; flex: 1; height: 4px; background: var(--rule); }
.bar > span { position: absolute; inset: 0 auto 0 0; background: var(--ink); }
.bar::after { content: ""; position: absolute; left: 80%; top: -4px; bottom: -4px; width: 2px; background: var(--ink); }
.passed .bar > span { background: var(--not-met); }
.passed .share { color: var(--not-met); font-weight: 650; }
.unfolded { padding: .25rem 0 1rem 7.25rem; }
.remedy { font-weight: 400; }
.steps { max-width: none; counter-reset: step; margin-top: .5rem; }
.steps li { display: grid; grid-template-columns: minmax(0, 15rem) minmax(0, 1fr) minmax(0, 15rem); gap: 0 1rem; padding: .25rem 0; border-top: 1px dotted var(--rule); }
.steps .about, .steps .from, .rule { color: var(--soft); }

@media (max-width: 62rem) {
  .check > summary { grid-template-columns: 6.25rem minmax(0, 1fr) 8rem; }
  .check .asks { grid-column: 2 / 4; }
  .check .sides { grid-column: 2; }
  .check .use { grid-column: 3; }
  .check .clause { grid-column: 2 / 4; }
  .steps li { grid-template-columns: minmax(0, 1fr); }
  .unfolded { padding-left: 1rem; }
}
@media (max-width: 40rem) {
  body { padding: 1rem 1rem 5rem; overflow-wrap: anywhere; }
  .place { grid-template-columns: 2rem minmax(0, 1fr); }
  .mark svg { width: 26px; height: 26px; }
  .mark::before { left: 9px; }
  .ac .mark::after, .change .mark::after { left: 6px; }
  .change .mark::after { top: 28px; }
  .earth .mark::before { left: 12px; }
  .walk li { grid-template-columns: 1fr auto; }
  .walk .shapes { grid-column: 1 / 3; }
  .check > summary { grid-template-columns: minmax(0, 1fr) 7rem; }
  .check .verdict, .check .asks, .check .clause { grid-column: 1 / 3; }
  .check .sides { grid-column: 1; }
  .check .use { grid-column: 2; }
  .found, .pair { display: block; }
  .found > *, .pair > * { margin-bottom: 1.25rem; }
  .title-block h1, .title-block dl > div { padding-left: .75rem; padding-right: .75rem; }
  .card { padding: 1rem 2.75rem 1rem 1rem; }
}
`;
