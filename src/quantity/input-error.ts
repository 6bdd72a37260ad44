/** What is wrong with an input: a closed list, so that programs can act on it. */
export type ProblemCode =
  | "missing"
  | "unknown-key"
  | "empty"
  | "not-a-number"
  | "decimal-comma"
  | "not-finite"
  | "too-many-digits"
  | "too-large"
  | "unknown-unit"
  | "other-dimension"
  | "out-of-domain"
  | "implausible"
  | "not-in-list"
  | "wrong-type"
  | "requirement"
  | "not-tabulated"
  | "contradiction"
  | "refused"
  | "not-readable";

/** One problem of an input. */
export interface Problem {
  /** Where it is: a symbol's key, or a path into a description such as `inverters[0].startVoltage`. */
  readonly path: string;
  readonly code: ProblemCode;
  /** A sentence for a person. */
  readonly message: string;
  /** What would have been right, unit included. */
  readonly expected: string;
  /** What came, as text. */
  readonly received: string;
}

/** The input cannot be used; `problems` lists every reason at once. Recognise it by `name`, since two copies of the package have two classes. */
export class InputError extends Error {
  override readonly name = "InputError";
  readonly problems: readonly Problem[];

  constructor(subject: string, problems: readonly Problem[]) {
    const lines = problems.map((problem) => `${problem.path}: ${problem.message}`);
    super(`${subject}: ${lines.join("; ")}`);
    this.problems = Object.freeze(problems.map((problem) => Object.freeze({ ...problem })));
  }
}

/** Whether an error is an `InputError` of any copy of this package. */
export function isInputError(error: unknown): error is InputError {
  return error instanceof Error && error.name === "InputError" && "problems" in error;
}

/** A received value as short text for a message. */
export function received(value: unknown): string {
  if (typeof value === "string") return value.length > 60 ? `"${value.slice(0, 57)}…"` : `"${value}"`;
  if (typeof value === "number" || typeof value === "bigint") return String(value);
  if (value === null || value === undefined || typeof value === "boolean") return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && "text" in value && "unit" in value)
    return `${String(value.text)} ${String(value.unit)}`;
  return typeof value === "object" ? "an object" : `a ${typeof value}`;
}
