import { InputError, type Problem } from "../../quantity/index.js";

/** Refuses what is not a finite number, so that no NaN ever passes on. @internal */
export function finite(id: string, values: Readonly<Record<string, number>>): void {
  const problems = Object.entries(values)
    .filter(([, value]) => typeof value !== "number" || !Number.isFinite(value))
    .map(([path, value]): Problem => ({
      path,
      code: "not-finite",
      message: "must be a finite number",
      expected: "a finite number",
      received: String(value),
    }));
  if (problems.length > 0) throw new InputError(id, problems);
}
