import type { PlantRecord } from "../plant/index.js";

/** What the command's exit code says; a shell or another program reads nothing else. */
export const EXIT = {
  allMet: 0,
  somethingNotMet: 1,
  somethingOpen: 2,
  /** The command line cannot be understood. */
  badUse: 64,
  /** A description, record or id cannot be used. */
  badInput: 65,
  /** The command itself has a fault. */
  failedInside: 70,
  /** Reading or writing failed. */
  failedToReadOrWrite: 74,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

const BY_VERDICT: Readonly<Record<PlantRecord["outcome"]["verdict"], ExitCode>> = {
  met: EXIT.allMet,
  "not-met": EXIT.somethingNotMet,
  open: EXIT.somethingOpen,
};

export const exitOf = ({ outcome }: Pick<PlantRecord, "outcome">): ExitCode => BY_VERDICT[outcome.verdict];

/** Gravest last: a bad input weighs more than an unmet requirement, that more than an open one. */
const WEIGHT: readonly ExitCode[] = [
  EXIT.allMet,
  EXIT.somethingOpen,
  EXIT.somethingNotMet,
  EXIT.badUse,
  EXIT.badInput,
  EXIT.failedToReadOrWrite,
];

/** The gravest of several exit codes. */
export function gravest(codes: readonly ExitCode[]): ExitCode {
  return codes.reduce<ExitCode>(
    (worst, code) => (WEIGHT.indexOf(code) > WEIGHT.indexOf(worst) ? code : worst),
    EXIT.allMet,
  );
}

/** Ends the command with a message for a person and a code for a program. */
export class Failure extends Error {
  override readonly name = "Failure";

  constructor(
    message: string,
    readonly code: ExitCode,
  ) {
    super(message);
  }
}
