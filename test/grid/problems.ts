import { InputError, type Problem } from "../../src/quantity/index.js";

/** The problems of a call that is to be refused. */
export function problemsOf(call: () => unknown): readonly Problem[] {
  try {
    call();
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error("nothing was thrown");
}
