import { describe, expect, it } from "vitest";
import { formulas, subjectOf } from "../../src/catalogue/index.js";
import { onlySubject } from "../harness/reference-data.js";
import { incoherence } from "./coherence.js";

// The bare numbers in the declared units give what the quantities give, so every number that has a unit is named.
describe("units give the declared unit with factor 1 in", () => {
  const chosen = formulas().filter(({ id }) => onlySubject === "" || subjectOf(id) === onlySubject);
  for (const { id, declaration } of chosen) it(id, () => expect(incoherence(declaration)).toBeNull());
});
