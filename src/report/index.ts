/**
 * Views of the sizing record: HTML, text, Markdown, CSV, JSON, and figures. They read the record and nothing else.
 *
 * @packageDocumentation
 */
export { checksCsv } from "./csv/checks-csv.js";
export { materialsCsv } from "./csv/materials-csv.js";
export { lineDiagrams } from "./figure/diagram/line-diagram.js";
export { ladderFigure } from "./figure/ladder.js";
export { pathFigure } from "./figure/path.js";
export { profileFigure } from "./figure/profile.js";
export type { Figure } from "./figure/svg.js";
export { windowFigure } from "./figure/window.js";
export { reportHtml } from "./html/page.js";
export { reportJson } from "./json/report-json.js";
export { type MaterialLine, materialList } from "./material/material-list.js";
export { reportMarkdown } from "./markdown/report-markdown.js";
export { reportText, type TextOptions } from "./text/report-text.js";
export type { ReportOptions } from "./view/options.js";
export { commissioningSheetHtml } from "./html/commissioning/commissioning-sheet.js";
export { judgedSheetHtml } from "./html/commissioning/judged-sheet.js";
export { judgedSheetText } from "./text/judged-text.js";
