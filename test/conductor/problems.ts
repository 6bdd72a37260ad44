import { isInputError, type Problem } from "../../src/quantity/index.js";

/** The problems with which a call is refused; fails where it is not. */
export function problemsOf(call: () => unknown): readonly Problem[] {
  try {
    call();
  } catch (error) {
    if (isInputError(error)) return error.problems;
    throw error;
  }
  throw new Error("nothing was refused");
}
