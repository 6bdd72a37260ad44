import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { jsonSchemas } from "../../src/evidence/formats/schemas.js";
import { bibliography } from "../../src/source/index.js";
import { faultsOf } from "../harness/json-schemas.js";
import { allReferenceFiles, REFERENCE_DATA, referenceFiles } from "../harness/reference-data.js";

const { cases, guards, errata, terms, clauses, wrongReleases, changes, lock } = referenceFiles;

describe("schemas of the reference data", () => {
  it.each(Object.entries(jsonSchemas()))("%s is what the formats generate", (name, schema) => {
    expect(JSON.parse(readFileSync(join(REFERENCE_DATA, "schemas", name), "utf8"))).toEqual(schema);
  });

  it("has no schema without a format", () => {
    expect(readdirSync(join(REFERENCE_DATA, "schemas")).sort()).toEqual(Object.keys(jsonSchemas()).sort());
  });
});

describe("every file keeps its format", () => {
  it.each(cases)("cases/$path", ({ content }) => expect(faultsOf("cases.schema.json", content)).toEqual([]));
  it.each(guards)("guards/$path", ({ content }) => expect(faultsOf("guard.schema.json", content)).toEqual([]));
  it.each(errata)("errata/$path", ({ content }) => expect(faultsOf("errata.schema.json", content)).toEqual([]));
  it.each(terms)("terms/$path", ({ content }) => expect(faultsOf("terms.schema.json", content)).toEqual([]));
  it("clauses", () => {
    for (const { content } of clauses) expect(faultsOf("clauses.schema.json", content)).toEqual([]);
  });
  it("wrong-releases.json", () => expect(faultsOf("wrong-releases.schema.json", wrongReleases)).toEqual([]));
  it("changes.json", () => expect(faultsOf("changes.schema.json", changes)).toEqual([]));
  it("lock.json", () => expect(lock === null ? [] : faultsOf("lock.schema.json", lock)).toEqual([]));
  it("the bibliography", () => expect(faultsOf("sources.schema.json", bibliography)).toEqual([]));
});

function twice(ids: readonly string[]): readonly string[] {
  return ids.filter((id, at) => ids.indexOf(id) !== at);
}

describe("the files fit together", () => {
  const everyCase = cases.flatMap(({ content }) => content);
  const everyErratum = errata.flatMap(({ content }) => content);
  const allErrata = allReferenceFiles.errata.flatMap(({ content }) => content);
  const allCases = allReferenceFiles.cases.flatMap(({ content }) => content);
  const allGuards = allReferenceFiles.guards.map(({ content }) => content);
  const known = new Set(Object.keys(bibliography));

  it("no id stands twice", () => {
    expect(twice(allCases.map(({ id }) => id))).toEqual([]);
    expect(twice(allGuards.map(({ id }) => id))).toEqual([]);
    expect(twice(allErrata.map(({ id }) => id))).toEqual([]);
  });

  it("every source stands in the bibliography", () => {
    const cited = [
      ...everyCase.flatMap(({ seen, claims }) => [seen.in, ...(claims ? [claims.in] : [])]),
      ...guards.map(({ content }) => content.seen.in),
      ...everyErratum.map(({ source }) => source),
    ];
    expect([...new Set(cited)].filter((key) => !known.has(key))).toEqual([]);
  });

  it("a case and its erratum name each other", () => {
    const faults: string[] = [];
    for (const { id, erratum } of everyCase) {
      if (erratum !== null && !allErrata.find((entry) => entry.id === erratum)?.cases.includes(id))
        faults.push(`${id} names ${erratum}`);
    }
    for (const { id, cases: named } of everyErratum) {
      for (const name of named)
        if (allCases.find((one) => one.id === name)?.erratum !== id) faults.push(`${id} names ${name}`);
    }
    expect(faults).toEqual([]);
  });
});
