export { type Case, type CaseInput, caseSchema, casesSchema, type Rounding } from "./case.js";
export { type Change, changeSchema, changesSchema, type Lock, lockSchema } from "./change.js";
export { type Erratum, errataSchema, erratumSchema } from "./erratum.js";
export { type CopyGuard, type FormulaGuard, type Guard, guardSchema } from "./guard.js";
export { type ClauseEntry, clausesSchema, type WrongRelease, wrongReleasesSchema } from "./register.js";
export { type AuditSummary, summarySchema, type Tally, type Weak } from "./summary.js";
export { sourcesSchema, type Terms, termsSchema } from "./term.js";
