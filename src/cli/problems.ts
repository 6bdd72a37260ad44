import { isInputError, type Problem } from "../quantity/index.js";
import { EXIT, Failure } from "./exit.js";

/** A problem as a line: where it is, what is wrong, what would be right, what came. */
export function problemLine({ path, message, expected, received }: Problem): string {
  const where = path === "" ? "" : `${path}: `;
  const due = expected === "" || message.includes(expected) ? "" : `; expected ${expected}`;
  const came = received === "undefined" ? "" : `; received ${received}`;
  return `${where}${message}${due}${came}`;
}

/** Every problem of an input, under the name of its file. */
export function problemsText(name: string, problems: readonly Problem[]): string {
  const head = `${name}: ${problems.length === 1 ? "one problem" : `${problems.length} problems`}; nothing was written`;
  return [head, ...problems.map((problem) => `  ${problemLine(problem)}`)].join("\n");
}

/** Runs a step on the input of a file; what is wrong with the input becomes a failure that names the file. */
export function onInput<T>(name: string, step: () => T): T {
  try {
    return step();
  } catch (error) {
    if (isInputError(error)) throw new Failure(problemsText(name, error.problems), EXIT.badInput);
    throw error;
  }
}
