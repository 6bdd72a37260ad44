import { expect, it } from "vitest";
import { evidenceOf } from "../../src/cli/audit.js";
import { extendedLock, lockedItems, lockFaults } from "../../src/evidence/index.js";
import { REFERENCE_DATA } from "../harness/reference-data.js";

const evidence = evidenceOf(REFERENCE_DATA);
const items = lockedItems(evidence);

it("there is a lock (npm run audit -- --lock)", () => expect(evidence.lock).not.toBeNull());

it("what the lock holds was not altered or removed, unless changes.json says so", () => {
  expect(evidence.lock ? lockFaults(items, evidence.lock, evidence.changes) : []).toEqual([]);
});

it("the lock holds every case, table, guard and erratum (npm run audit -- --lock)", () => {
  if (evidence.lock) expect(extendedLock(items, evidence.lock)).toEqual(evidence.lock);
});
