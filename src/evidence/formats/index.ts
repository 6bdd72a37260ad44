export type { Case, CaseInput, Rounding } from "./case.js";
export type { Change, Lock } from "./change.js";
export type { Erratum } from "./erratum.js";
export type { CopyGuard, FormulaGuard, Guard } from "./guard.js";
export type { ClauseEntry, WrongRelease } from "./register.js";
export type { AuditSummary, Tally, Weak } from "./summary.js";
export type { Terms } from "./term.js";
