import { describe, expect, it } from "vitest";
import {
  catalogue,
  conditions,
  constants,
  formulas,
  models,
  ruleById,
  series,
  sources,
  tables,
} from "../../src/catalogue/index.js";
import { declaredRules } from "../harness/declared-rules.js";

describe("the catalogue", () => {
  it("forgets no declared rule of any folder", { timeout: 30_000 }, () => {
    const known = catalogue().rules;
    expect(
      declaredRules()
        .map(({ id }) => id)
        .filter((id) => !known.has(id)),
    ).toEqual([]);
  });

  it("lists each rule once, in the order of ids", () => {
    const all = [...formulas(), ...tables(), ...series(), ...conditions(), ...models()];
    expect(all.length).toBe(catalogue().rules.size);
    const ids = [...catalogue().rules.keys()];
    expect(ids).toEqual([...ids].sort());
    expect(ruleById(ids[0]!)?.id).toBe(ids[0]);
    expect(ruleById("none/none")).toBeUndefined();
  });

  it("lists each constant once, with the formulas that use it, and each source, with what cites it", () => {
    const keys = constants().map(({ key }) => key);
    expect(keys).toEqual([...new Set(keys)].sort());
    expect(constants().find(({ key }) => key === "stcTemperature")?.usedBy).toContain("module/open-circuit-voltage-at");
    expect(sources().every(({ citedBy, title }) => citedBy.length > 0 && title !== "")).toBe(true);
  });
});
