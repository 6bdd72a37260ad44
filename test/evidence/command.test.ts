import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { auditCommand } from "../../src/cli/audit.js";
import type { Case } from "../../src/evidence/index.js";
import { faultsOf } from "../harness/json-schemas.js";
import { REFERENCE_DATA } from "../harness/reference-data.js";
import { ownCase } from "./own-case.js";

let folder: string;
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), "audit-"))));
afterAll(() => rmSync(folder, { recursive: true }));

function audit(...args: string[]): { readonly code: number; readonly text: string } {
  const texts: string[] = [];
  const writeLock = (): void => expect.fail("the lock was written");
  const code = auditCommand(args, {
    referenceData: REFERENCE_DATA,
    library: "0.0.0",
    print: (text) => texts.push(text),
    writeLock,
  });
  return { code, text: texts.join("\n") };
}

function withCases(content: unknown): string {
  writeFileSync(join(folder, "cases.json"), typeof content === "string" ? content : JSON.stringify(content));
  return folder;
}

const cold: Case = {
  ...ownCase(),
  checks: "module/voltage-at",
  inputs: {
    stcVoltage: { printed: "45.8 V" },
    absoluteVoltageCoefficient: { printed: "-0.13 V/K" },
    cellTemperature: { printed: "0 °C" },
  },
};

describe("the audit of a folder of one's own", () => {
  it("passes a case that agrees, and prints its summary as text or JSON", () => {
    const { code, text } = audit("--cases", withCases([cold]));
    expect([code, text]).toEqual([0, expect.stringContaining("cases      1: 1 agree, 0 deviate, 0 disputed; 1 count")]);
    expect(text.startsWith("No value was compared with a purchased standard")).toBe(true);
    const json = audit("--cases", folder, "--json");
    expect(faultsOf("audit-summary.schema.json", JSON.parse(json.text))).toEqual([]);
  });

  it.each([
    [
      "a deviation without erratum",
      [{ ...cold, expected: { ...cold.expected, printed: "49.06" } }],
      "no erratum says why",
    ],
    ["an unknown formula", [{ ...cold, checks: "module/none" }], "module/none is not known"],
    ["a case that throws", [{ ...cold, inputs: {} }], "missing"],
    ["a case in another format", [{ ...cold, tolerance: "1 %" }], "tolerance"],
    ["no case", [], "Too small"],
  ])("fails for %s", (_, cases, said) => {
    const { code, text } = audit("--cases", withCases(cases));
    expect([code, text]).toEqual([1, expect.stringContaining(said)]);
  });

  it("fails for an empty folder and a folder that is not there", () => {
    expect(audit("--cases", join(folder, "none")).code).toBe(1);
    expect(audit("--cases", join(folder, "none")).text).toContain("there is no case in this folder");
  });

  it("names a file that is no JSON, and what it does not know how to do", () => {
    expect(() => audit("--cases", withCases("{"))).toThrow("cases.json");
    expect(audit("--tolerance")).toMatchObject({
      code: 2,
      text: expect.stringContaining("unknown: --tolerance") as string,
    });
    expect(audit("--cases").code).toBe(2);
  });
});
