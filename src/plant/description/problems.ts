import type * as z from "zod/mini";
import { nearestName, type Problem, type ProblemCode } from "../../quantity/index.js";
import { received } from "../../quantity/input-error.js";
import { keysAt, type Path, pathText, valueAt } from "./path.js";

type Issue = z.core.$ZodIssue;

/** Turns the findings of the schema into problems that name path, expectation and what came. */
export function problemsOf(schema: z.ZodMiniType, input: unknown, issues: readonly Issue[]): Problem[] {
  return issues.flatMap((issue) => problemsOfIssue(schema, input, issue));
}

function problemsOfIssue(schema: z.ZodMiniType, input: unknown, issue: Issue): Problem[] {
  const path = issue.path as Path;
  const value = valueAt(input, path);
  const problem = (code: ProblemCode, message: string, expected: string): Problem => ({
    path: pathText(path),
    code,
    message,
    expected,
    received: received(value),
  });
  switch (issue.code) {
    case "custom": {
      const ready = (issue.params as { problem?: Problem } | undefined)?.problem;
      return [ready ? { ...ready, path: pathText(path) } : problem("refused", issue.message, "")];
    }
    case "unrecognized_keys": {
      const known = keysAt(schema, path);
      return issue.keys.map((key) => {
        const near = nearestName(key, known);
        return {
          path: pathText([...path, key]),
          code: "unknown-key",
          message: `${key.slice(0, 60)} is not known here${near ? `; did you mean ${near}?` : ""}`,
          expected: known.join(", "),
          received: received(valueAt(input, [...path, key])),
        };
      });
    }
    case "invalid_value": {
      const expected = issue.values.map(String).join(", ");
      const near = typeof value === "string" ? nearestName(value, issue.values.map(String)) : undefined;
      if (value === undefined) return [problem("missing", `missing; expected one of ${expected}`, expected)];
      return [problem("not-in-list", `must be one of ${expected}${near ? `; did you mean ${near}?` : ""}`, expected)];
    }
    case "invalid_union": {
      // The branch that got deepest says most about what was meant.
      const branches = issue.errors.filter((errors) => errors.length > 0);
      const ready = branches.flat().find((inner) => inner.code === "custom" || inner.path.length > 0);
      const listed = branches.flat().find((inner) => inner.code === "invalid_value");
      if (value === undefined) return [problem("missing", "missing", "a value")];
      const literals = branches
        .flat()
        .flatMap((inner) => (inner.code === "invalid_value" && inner.path.length === 0 ? inner.values : []));
      if (literals.length > 0 && !ready && typeof value !== "object") {
        const expected = literals.map(String).join(", ");
        return [problem("not-in-list", `must be one of ${expected}`, expected)];
      }
      const bare = branches.every((errors) =>
        errors.every((inner) => inner.code === "invalid_type" && inner.path.length === 0),
      );
      if (bare) return [problem("wrong-type", "expected a number or text with a unit", "a number or text with a unit")];
      const branch = ready ? branches.find((errors) => errors.includes(ready))! : listed ? [listed] : branches[0]!;
      return branch.flatMap((inner) => problemsOfIssue(schema, input, { ...inner, path: [...path, ...inner.path] }));
    }
    case "invalid_type": {
      const expected = issue.expected === "int" ? "a whole number" : `a value of type ${issue.expected}`;
      if (value === undefined) return [problem("missing", `missing; expected ${expected}`, expected)];
      return [problem("wrong-type", `expected ${expected}`, expected)];
    }
    case "too_small":
      return [
        problem(
          value === "" ? "empty" : "out-of-domain",
          `must have or be at least ${String(issue.minimum)}`,
          `at least ${String(issue.minimum)}`,
        ),
      ];
    case "too_big":
      return [
        problem(
          "out-of-domain",
          `must have or be at most ${String(issue.maximum)}`,
          `at most ${String(issue.maximum)}`,
        ),
      ];
    default:
      return [problem("refused", issue.message, "")];
  }
}
