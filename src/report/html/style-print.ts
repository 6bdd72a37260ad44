/** A4: the working is open only where it was asked for, numbers lose their dots, and colours stay as drawn. */
export const PRINT = `
@page { size: A4; margin: 16mm 14mm 18mm; @bottom-right { content: counter(page) " / " counter(pages); font: 9pt system-ui, sans-serif; } }
@media print {
  :root { --paper: #fff; --ink: #000; --not-met: #b3261e; --heading: 13pt; color-scheme: light; }
  html, body { background: none; }
  body { padding: 0; max-width: none; font-size: 9.5pt; line-height: 1.4; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  .skip, .card, #working, .check .asks::after { display: none; }
  .statements:not([open]) { display: none; }
  button.n { text-decoration: none; }
  main > section { margin-top: 8mm; }
  h1, h2, h3, .kind { break-after: avoid; }
  .attention, .cautions, #line, .walk, .results, figure, .check > summary, .steps li, .results tr, .sheet tr { break-inside: avoid; }
  .place { grid-template-columns: 14mm minmax(0, 1fr); }
  .place .content { padding-bottom: 7mm; }
  .check > summary { grid-template-columns: 15mm minmax(0, 1fr) 33mm 18mm 32mm; gap: 0 2.5mm; padding: .8mm 0; }
  .check .verdict, .check .asks, .check .sides, .check .use, .check .clause { grid-column: auto; }
  .steps li { grid-template-columns: 38mm minmax(0, 1fr) 38mm; }
  .unfolded { padding-left: 20mm; }
  .results th { min-width: 40mm; }
  .frame { overflow: visible; }
  figure.wide svg { max-width: 168mm; }
  .pair svg { height: 93mm; width: auto; max-width: none; }
  .found, .pair { gap: 4mm 5mm; }
  .pair { break-inside: avoid; }
  .cautions { padding: 3mm 4mm; margin-top: 5mm; }
  .cautions ul { columns: 2; column-gap: 8mm; }
  .title-block dl { grid-template-columns: repeat(5, auto); }
  .title-block dl > div { padding: 1.5mm 3mm; }
  .title-block h1 { padding: 3mm; }
  .sheet th, .sheet td { min-width: 0; }
  a { text-decoration: none; }
  #cautions-again { break-inside: avoid; }
}
`;
