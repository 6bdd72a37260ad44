import { InputError, nearestName } from "../../quantity/index.js";
import type { Grade } from "../../source/index.js";

/** One entry of a closed list. */
export interface Listed {
  readonly key: string;
  readonly label: string;
  readonly edition: string;
  readonly grade: Grade;
}

/** The entry of a closed list that bears a name; an `InputError` that lists the known where none does. */
export function fromClosedList<T extends { readonly key: string }>(
  list: readonly T[],
  name: string,
  path: string,
  what: string,
): T {
  const found = list.find(({ key }) => key === name);
  if (found) return found;
  const known = list.map(({ key }) => key);
  const near = nearestName(name, known);
  throw new InputError(what, [
    {
      path,
      code: "not-in-list",
      message: `${name} is not a known ${what}${near === undefined ? "" : `; did you mean ${near}?`} Known are ${known.join("; ")}`,
      expected: known.join("; "),
      received: name,
    },
  ]);
}
