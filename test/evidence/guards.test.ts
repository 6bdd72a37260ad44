import { describe, expect, it } from "vitest";
import { runGuard } from "../../src/evidence/index.js";
import { onlySubject, referenceFiles } from "../harness/reference-data.js";

it("there are guards, unless one subject is singled out", () => {
  expect(referenceFiles.guards.length > 0 || onlySubject !== "").toBe(true);
});

// One test a guard; it names every cell that disagrees.
describe.each(referenceFiles.guards)("guards/$path", ({ content }) => {
  it(`${content.table} by ${content.by}`, () => {
    const { cells, problems } = runGuard(content);
    const differ = cells
      .filter(({ agrees }) => !agrees)
      .map(({ place, shipped, due }) => `${place}: ships ${shipped}, guard ${due}`);
    expect([...problems, ...differ]).toEqual([]);
  });
});
