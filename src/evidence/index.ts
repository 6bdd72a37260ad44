/**
 * Published values against computed ones: cases, table guards, what counts, and the audit.
 *
 * @packageDocumentation
 */
export { type Outcome, runCase, runCases } from "./cases/run-case.js";
export { type GuardedCell, type GuardOutcome, runGuard } from "./guards/run-guard.js";
export type * from "./formats/index.js";
