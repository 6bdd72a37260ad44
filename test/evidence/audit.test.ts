import { describe, expect, it } from "vitest";
import { audit, type Case, type Evidence, usesIn } from "../../src/evidence/index.js";
import type { Check } from "../../src/formula/index.js";
import { makeRecorder } from "../../src/plant/record/recorder.js";
import { faultsOf } from "../harness/json-schemas.js";
import { ownCase } from "./own-case.js";
import { ownRules } from "./own-rules.js";

const evidence = (...cases: Case[]): Evidence => ({ cases, guards: [], errata: [], changes: [], lock: null });
const run = (...cases: Case[]) => audit(evidence(...cases), { library: "0.0.0", from: ownRules });
const coarse = ownCase({ id: "coarse", expected: { printed: "49" } });

describe("the audit", () => {
  it("keeps the published format of its summary", () => {
    expect(faultsOf("audit-summary.schema.json", JSON.parse(JSON.stringify(run(ownCase(), coarse).summary)))).toEqual(
      [],
    );
    expect(faultsOf("audit-summary.schema.json", { format: "pv-to-grid/audit@1" })).not.toEqual([]);
  });

  it("counts a formula as proven, partly proven or unproven by what its cases notice", () => {
    const stateOf = (...cases: Case[]) => run(...cases).proofs.find(({ id }) => id === "own/voltage-at");
    expect(stateOf(ownCase())).toMatchObject({ state: "proven", unnoticed: [] });
    expect(stateOf(coarse)).toMatchObject({
      state: "partly",
      unnoticed: ["absoluteVoltageCoefficient", "cellTemperature"],
    });
    expect(stateOf(ownCase({ expected: { digitsSure: false } }))).toMatchObject({ state: "unproven", cases: [] });
  });

  it("credits a case with what it notices on the way to its result", () => {
    const inputs = {
      "route.section": { printed: "4 mm²" },
      "route.material": { printed: "copper" },
      factor: { printed: "0.58" },
    };
    const chain = ownCase({
      checks: "own/cable-current",
      at: "allowed",
      inputs,
      expected: { printed: "20.9", unit: "A" },
    });
    const stateOf = (one: Case) => run(one).proofs.find(({ id }) => id === "own/derated");
    expect(stateOf(chain)).toMatchObject({ state: "proven", cases: ["own-cold"] });
    const coarse = ownCase({
      ...chain,
      at: "check.verdict",
      expected: { printed: "met", unit: "", rounding: "exact" },
    });
    expect(stateOf(coarse)).toMatchObject({ state: "proven" });
    const rough = ownCase({ ...chain, expected: { printed: "2e1", unit: "A" } });
    expect(stateOf(rough)).toMatchObject({ state: "unproven", unnoticed: ["ampacity", "factor"] });
  });

  it("counts published examples and their publishers, not numbers", () => {
    const { examples, cases } = run(ownCase(), coarse, ownCase({ id: "x", example: "other" })).summary.total;
    expect(examples).toEqual({ counting: 2, publishers: 1 });
    expect(cases).toMatchObject({ all: 3, agree: 3, counting: 3 });
  });

  it("names the case nearest to what its digits allow", () => {
    expect(run(ownCase(), coarse).summary.total.largestShareOfTolerance).toEqual({ share: "0.1000", case: "coarse" });
    expect(run().summary.total.largestShareOfTolerance).toBeNull();
  });

  it("has a fault for a deviation, a case that fails, and an erratum that disputes an agreement", () => {
    expect(run(ownCase()).faults).toEqual([]);
    expect(run(ownCase({ expected: { printed: "49.06" } })).faults[0]).toContain("no erratum says why");
    expect(run(ownCase({ checks: "own/none" })).faults).toEqual(["own-cold: own/none is not known"]);
    expect(run(ownCase({ erratum: "e" })).faults[0]).toContain("erratum e disputes it");
    expect(run(ownCase({ erratum: "e", expected: { printed: "49.06" } }))).toMatchObject({
      faults: [],
      summary: { total: { cases: { disputed: 1 } } },
    });
  });

  it("lists what is weak, what safety leans on first", () => {
    const calculation = ownRules.calculations.get("own/cable-current")!;
    const { check } = calculation.call({ route: { section: "4 mm²", material: "copper" }, factor: "0.5" }) as {
      check: Check;
    };
    const recorder = makeRecorder();
    const sized = { checks: [recorder.check(check)], steps: recorder.steps() };
    const { summary } = audit(evidence(), { library: "0.0.0", from: ownRules, uses: usesIn([sized]) });
    const safe = summary.weak.filter(({ safety }) => safety).map(({ id }) => id);
    expect(safe).toEqual(["own/ampacities", "own/derated", "own/within"]);
    expect(summary.weak.find(({ id }) => id === "own/ampacities")).toEqual({
      id: "own/ampacities",
      kind: "table",
      why: "5 of 5 cells unguarded",
      usedByChecks: ["own/within"],
      safety: true,
    });
    expect(summary.weak.find(({ id }) => id === "own/voltage-at")!.why).toBe(
      "common-practice; unproven: no reason given",
    );
    expect(summary.weak.find(({ id }) => id === "stcTemperature")).toMatchObject({
      kind: "constant",
      why: "common-practice",
      safety: false,
    });
  });
});
