import { describe, expect, it } from "vitest";
import { formulas, models, subjectOf, tables } from "../../src/catalogue/index.js";
import { dimensionOf } from "../../src/quantity/index.js";
import { allReferenceFiles, onlySubject } from "../harness/reference-data.js";

const registered = new Set(allReferenceFiles.terms.flatMap(({ content }) => Object.keys(content)));
const isChosen = ({ id }: { readonly id: string }): boolean => onlySubject === "" || subjectOf(id) === onlySubject;

/** Every key of a quantity with its kind of quantity, and the rule that uses it. */
function quantityKeys(): readonly { readonly key: string; readonly kind: string; readonly id: string }[] {
  const taken = [...formulas(), ...models()].flatMap(({ id, declaration }) =>
    Object.entries(declaration.takes).map(([key, take]) => ({
      key,
      kind: "each" in take ? `list of ${dimensionOf(take.each)}` : dimensionOf(take.unit),
      id,
    })),
  );
  const rows = tables().flatMap(({ id, declaration: { rows: heading } }) =>
    "unit" in heading ? [{ key: heading.name, kind: dimensionOf(heading.unit), id }] : [],
  );
  return [...taken, ...rows];
}

describe("one key per quantity everywhere", () => {
  it("every key of a formula, method or table is registered with its terms", () => {
    const headings = tables().flatMap(({ id, declaration: { rows, columns = {} } }) =>
      [rows.name, ...Object.keys(columns)].map((key) => ({ key, id })),
    );
    const unknown = [...quantityKeys(), ...headings].filter((use) => isChosen(use) && !registered.has(use.key));
    expect([...new Set(unknown.map(({ key, id }) => `${key} (${id})`))]).toEqual([]);
  });

  it("a key means one kind of quantity", () => {
    const kinds = new Map<string, Map<string, string>>();
    for (const { key, kind, id } of quantityKeys())
      kinds.set(key, (kinds.get(key) ?? new Map<string, string>()).set(kind, id));
    const several = [...kinds].filter(([, uses]) => uses.size > 1 && [...uses.values()].some((id) => isChosen({ id })));
    expect(
      several.map(([key, uses]) => `${key}: ${[...uses].map(([kind, id]) => `${kind} in ${id}`).join(", ")}`),
    ).toEqual([]);
  });

  it("a key has the same terms in every file that registers it", () => {
    const texts = new Map<string, Set<string>>();
    for (const { content } of allReferenceFiles.terms) {
      for (const [key, { symbol, iec, nec }] of Object.entries(content)) {
        texts.set(key, (texts.get(key) ?? new Set<string>()).add([symbol, iec, nec].join(" | ")));
      }
    }
    const differing = [...texts].filter(([, said]) => said.size > 1);
    expect(differing.map(([key, said]) => `${key}: ${[...said].join(" / ")}`)).toEqual([]);
  });
});
