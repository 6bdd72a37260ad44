import { describe, expect, it } from "vitest";
import { runCase } from "../../src/evidence/index.js";
import { onlySubject, referenceFiles } from "../harness/reference-data.js";

it("there are cases, unless one subject is singled out", () => {
  expect(referenceFiles.cases.length > 0 || onlySubject !== "").toBe(true);
});

// One test a printed number: it agrees by its digits, or an erratum says why it does not.
describe.each(referenceFiles.cases)("cases/$path", ({ content }) => {
  it.each(content)("$id", (one) => {
    const { status, agrees, computed, problem } = runCase(one);
    expect(problem).toBeNull();
    const { printed, unit, rounding } = one.expected;
    const saw = `computed ${computed}, printed ${printed} ${unit} (${rounding})`;
    if (status === "disputed") expect(agrees, `${saw}: agrees, so no erratum is due`).toBe(false);
    else expect(status, saw).toBe("agrees");
  });
});
