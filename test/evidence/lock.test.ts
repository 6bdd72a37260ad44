import { createHash } from "node:crypto";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Change } from "../../src/evidence/index.js";
import { evidenceHash, extendedLock, lockedItems, lockFaults } from "../../src/evidence/index.js";
import { sha256 } from "../../src/evidence/lock/sha256.js";
import { ownCase } from "./own-case.js";
import { ownRules } from "./own-rules.js";

const items = (cases = [ownCase()]) => lockedItems({ cases, guards: [], errata: [] }, ownRules);
const lock = extendedLock(items(), null);
const change = (altered: Partial<Change>): Change => ({
  id: "cases/own-cold",
  field: "",
  from: null,
  to: null,
  reason: "misread",
  date: "2025-01-01",
  ...altered,
});
const altered = items([ownCase({ expected: { printed: "49.1" } })]);

describe("the lock", () => {
  it("is content with what it holds, and with more", () => {
    expect(lockFaults(items(), lock, [])).toEqual([]);
    expect(lockFaults(items([ownCase(), ownCase({ id: "another" })]), lock, [])).toEqual([]);
  });
  it("notices an altered case, a removed one, and an altered table", () => {
    expect(lockFaults(altered, lock, [])).toEqual(["cases/own-cold was altered, and no change says so"]);
    expect(lockFaults(items([]), lock, [])).toEqual(["cases/own-cold was removed, and no change says so"]);
    const tables = new Map(items().tables);
    tables.set("own/ampacities", { cells: {} });
    expect(lockFaults({ ...items(), tables }, lock, [])).toEqual([
      "tables/own/ampacities was altered, and no change says so",
    ]);
  });
  it("accepts an alteration that a change tells truly", () => {
    const told = change({ field: "/expected/printed", from: "49.05", to: "49.1" });
    expect(lockFaults(altered, lock, [told])).toEqual([]);
    expect(lockFaults(altered, lock, [{ ...told, from: "49.06" }])).toEqual([
      "cases/own-cold was altered, and no change says so",
    ]);
    expect(lockFaults(altered, lock, [{ ...told, to: "49.2" }])).toEqual([
      `cases/own-cold is not what its change of "/expected/printed" left`,
    ]);
    const twice = [
      change({ field: "/expected/printed", from: "49.05", to: "49.0" }),
      change({ field: "/expected/printed", from: "49.0", to: "49.1" }),
    ];
    expect(lockFaults(altered, lock, twice)).toEqual([]);
  });
  it("accepts a removal that a change tells, and no change of what it does not hold", () => {
    expect(lockFaults(items([]), lock, [change({ from: ownCase() })])).toEqual([]);
    expect(lockFaults(items(), lock, [change({ id: "cases/none" })])).toEqual([
      "cases/none has a change, but the lock does not hold it",
    ]);
  });
  it("keeps what it held when it is extended", () => {
    expect(extendedLock(altered, lock)).toEqual(lock);
    expect(Object.keys(extendedLock(items([ownCase(), ownCase({ id: "another" })]), lock).cases)).toEqual([
      "another",
      "own-cold",
    ]);
  });
  it("has one hash for the whole, which any change moves", () => {
    expect(evidenceHash(items())).toMatch(/^sha256:[0-9a-f]{64}$/);
    expect(evidenceHash(items())).not.toBe(evidenceHash(altered));
  });
});

describe("SHA-256", () => {
  it("gives the published digest of abc (FIPS 180-4 example)", () => {
    expect(sha256("abc")).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });
  test.prop([fc.string({ unit: "grapheme", maxLength: 300 })])("agrees with another implementation", (text) => {
    expect(sha256(text)).toBe(createHash("sha256").update(text, "utf8").digest("hex"));
  });
});
