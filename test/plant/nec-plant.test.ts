import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type PlantDescription, sizePlant } from "../../src/index.js";

const clinic = JSON.parse(
  readFileSync(new URL("../../shared/plants/prairie-clinic.json", import.meta.url), "utf8"),
) as PlantDescription;
const record = sizePlant(clinic);
const check = (id: string) => record.checks.find((item) => item.id === id);

describe("the prairie clinic, by NFPA 70:2023", () => {
  it("takes 125 % of the short-circuit current, and that again at the terminals", () => {
    expect(record.strings[0]!.maximumCurrent!.value).toBe("17.35");
    expect(check("conductor/within-terminal-ampacity/South roof-Inverter/Inverter")).toMatchObject({
      verdict: "met",
      value: { value: "21.6875" },
      limit: { value: "25" },
    });
  });

  it("has a 40 A breaker for 31.7 A of continuous current", () => {
    expect(check("protection/continuous-current-within-rating/Inverter-Panelboard")).toMatchObject({
      value: { value: "39.625" },
      limit: { value: "40" },
    });
    expect(record.routes.map(({ sizeName }) => sizeName)).toEqual(["12 AWG", "8 AWG"]);
  });

  it("may feed a 200 A busbar behind a 200 A main from the opposite end: 200 + 1.25 · 31.7 = 239.625 A of 240 A", () => {
    expect(check("grid/busbar-within-allowance/opposite ends/Panelboard")).toMatchObject({
      verdict: "met",
      value: { value: "239.625" },
      limit: { value: "240" },
    });
  });

  it("asks for shutdown devices at the modules and for arc-fault protection", () => {
    expect(check("string/rapid-shutdown-present/Inverter")!.verdict).toBe("met");
    expect(check("string/arc-fault-protection-present/Inverter")!.verdict).toBe("met");
  });

  it("has equipment grounding conductors by table 250.122", () => {
    expect(check("earthing/equipment-grounding-large-enough/Inverter-Panelboard")).toMatchObject({
      verdict: "met",
      value: { value: "10380", unit: "cmil" },
    });
  });

  it("has an id of its own for every check", () => {
    const ids = record.checks.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });
});
