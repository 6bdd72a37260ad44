/**
 * Published values against computed ones: cases, table guards, what counts, and the audit. Data in, data out; no files.
 *
 * @packageDocumentation
 */
export { type Agreement, agreement } from "./agreement.js";
export { type Audit, audit, type AuditOptions, type Evidence } from "./audit.js";
export { judgeCase, type JudgedCase } from "./cases/counting.js";
export { noticedInputs } from "./cases/noticing.js";
export { type Proof, proofs } from "./cases/proof.js";
export { type Outcome, runCase, runCases } from "./cases/run-case.js";
export { type CellState, cellStates } from "./cells/cells.js";
export type * from "./formats/index.js";
export { type GuardedCell, type GuardOutcome, runGuard } from "./guards/run-guard.js";
export { evidenceHash, extendedLock, type LockedItems, lockedItems, lockFaults } from "./lock/lock.js";
export { type Changes, replay, type Swap } from "./replay.js";
export { nearestLimit } from "./summary/tally.js";
export { type Uses, usesIn } from "./summary/uses.js";
export type { Evaluator } from "./reevaluation/evaluator.js";
export { type Difference, type Reevaluation, reevaluate, type Working } from "./reevaluation/reevaluate.js";
export { workingOf } from "./reevaluation/working-of.js";
