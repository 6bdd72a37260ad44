import { InputError } from "../../quantity/index.js";

/** Refuses a combination that the document of the rules does not tabulate, with the reason and what would help. */
export function refuse(path: string, message: string, expected: string, received: string): never {
  throw new InputError("conductor/ampacity", [{ path, code: "refused", message, expected, received }]);
}
