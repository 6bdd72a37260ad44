import { expect, it } from "vitest";
import { formulas } from "../../src/catalogue/index.js";

it("a constant of one key has the same value, unit and citation wherever it stands", () => {
  const said = new Map<string, Map<string, string>>();
  for (const { id, declaration } of formulas()) {
    for (const [key, { value, unit, source }] of Object.entries(declaration.constants ?? {})) {
      said.set(key, (said.get(key) ?? new Map<string, string>()).set(JSON.stringify({ value, unit, source }), id));
    }
  }
  const differing = [...said].filter(([, texts]) => texts.size > 1);
  expect(
    differing.map(([key, texts]) => `${key}: ${[...texts].map(([text, id]) => `${text} in ${id}`).join("; ")}`),
  ).toEqual([]);
});
