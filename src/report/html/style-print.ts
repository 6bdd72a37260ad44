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
  h1, h2, h3 { break-after: avoid; }
  .attention, .cautions, figure, .check > summary, .steps li, .results tr, .sheet tr { break-inside: avoid; }
  .place { grid-template-columns: 14mm minmax(0, 1fr); }
  .place .content { padding-bottom: 7mm; }
  .check > summary { grid-template-columns: 17mm minmax(0, 1fr) 34mm 22mm 40mm; gap: 0 3mm; padding: 1mm 0; }
  .check .verdict, .check .asks, .check .sides, .check .use, .check .clause { grid-column: auto; }
  .steps li { grid-template-columns: 38mm minmax(0, 1fr) 38mm; }
  .unfolded { padding-left: 20mm; }
  .frame { overflow: visible; }
  figure.wide svg { width: 100%; max-width: 165mm; }
  figure.narrow svg { width: 78mm; }
  .found, .pair { gap: 4mm 6mm; }
  .sheet th, .sheet td { min-width: 0; }
  a { text-decoration: none; }
  #cautions-again { break-inside: avoid; }
}
`;
