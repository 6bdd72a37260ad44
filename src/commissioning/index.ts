/**
 * Commissioning: what the installer should read at first switch-on, how readings are judged, the order of work, and the
 * performance of the first days.
 *
 * @packageDocumentation
 */
export * from "./comparison/average.js";
export * from "./comparison/conditions.js";
export * from "./comparison/identical-strings.js";
export * from "./comparison/spread.js";
export * from "./earth/conditions.js";
export * from "./earth/continuity.js";
export * from "./earth/expected-continuity.js";
export * from "./earth/residual-current.js";
export * from "./earth/residual-test.js";
export * from "./evaluation/conditions.js";
export * from "./evaluation/evaluate-reading.js";
export * from "./evaluation/magnitude.js";
export * from "./evaluation/reading-kinds.js";
export * from "./hint/conditions.js";
export * from "./hint/hint-kinds.js";
export * from "./hint/hints.js";
export * from "./hint/longest-that-tells.js";
export * from "./hint/missing-module.js";
export * from "./hint/modules-read.js";
export * from "./insulation/ac-insulation.js";
export * from "./insulation/ac-table.js";
export * from "./insulation/array-insulation.js";
export * from "./insulation/array-test.js";
export * from "./insulation/conditions.js";
export * from "./performance/corrected.js";
export * from "./performance/day.js";
export * from "./performance/performance-over.js";
export * from "./performance/yield.js";
export * from "./reading/acceptance-bands.js";
export * from "./reading/band.js";
export type { Band } from "./reading/bands.js";
export * from "./reading/cell-temperature.js";
export * from "./reading/cell-temperature-from.js";
export * from "./reading/expected-power.js";
export { type ExpectedReadings, expectedReadings, type StringUnderTest } from "./reading/expected-readings.js";
export * from "./reading/expected-voltage.js";
export * from "./reading/tolerances.js";
export { sheetJsonSchema } from "./sheet/json-schema.js";
export * from "./sheet/measurement-sheet.js";
export { readSheetCsv } from "./sheet/read-csv.js";
export { readSheetJson } from "./sheet/read-json.js";
export { type ReadSheet, sheetOf } from "./sheet/read-sheet.js";
export * from "./sheet/write-csv.js";
export * from "./translation/at-standard.js";
export * from "./translation/current-at-standard.js";
export * from "./translation/point-by-point.js";
export * from "./translation/translate-point.js";
export * from "./translation/voltage-at-standard.js";
export * from "./work/work-steps.js";
