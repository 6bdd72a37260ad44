import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import { chooseResidualDevice, type ResidualQuestion, residualTypesFor } from "../../src/protection/index.js";

const base: ResidualQuestion = {
  at: "INV1",
  earthing: "TT",
  asked: false,
  isolated: false,
  declaredType: "not declared",
  leakageCurrent: "5 mA",
  electrodeResistance: "60 Ω",
  device: "choose",
  upstream: "none",
};
const verdicts = (other: Partial<ResidualQuestion>): string =>
  chooseResidualDevice({ ...base, ...other })
    .checks.map(({ rule: { id }, verdict }) => `${id.slice(11)} ${verdict}`)
    .join(", ");

describe("type", () => {
  it("is B until the maker declares otherwise or the inverter separates", () => {
    expect(residualTypesFor("not declared", false)).toEqual(["B", "B+"]);
    expect(residualTypesFor("not declared", missing("inverters[0].isolated"))).toEqual(["B", "B+"]);
    expect(residualTypesFor("not declared", true)).toEqual(["A", "F", "B", "B+"]);
    expect(residualTypesFor("A", false)).toEqual(["A", "F", "B", "B+"]);
    expect(residualTypesFor("F", true)).toEqual(["F", "B", "B+"]);
  });
});

describe("choice", () => {
  const chosen = (other: Partial<ResidualQuestion>): string | undefined =>
    chooseResidualDevice({ ...base, ...other }).choice?.chosen?.in("mA").text;
  it("is the smallest that bears the leakage and that the electrode allows", () => {
    expect(chosen({})).toBe("30");
    expect(chosen({ leakageCurrent: "9 mA" })).toBe("30");
    expect(chosen({ leakageCurrent: "9.1 mA" })).toBe("100");
    expect(chosen({ leakageCurrent: "31 mA", electrodeResistance: "100 Ω" })).toBe("300");
    expect(chosen({ leakageCurrent: "31 mA", electrodeResistance: "200 Ω" })).toBeUndefined();
  });
  it("is not asked for where nobody asks", () => {
    expect(chooseResidualDevice({ ...base, earthing: "TN-S" })).toMatchObject({
      needed: false,
      choice: null,
      checks: [],
    });
    expect(chooseResidualDevice({ ...base, earthing: "TN-S", asked: true }).needed).toBe(true);
    expect(chooseResidualDevice({ ...base, earthing: missing("supply.earthing") }).needed).toEqual({
      missing: ["supply.earthing"],
    });
    expect(chooseResidualDevice(base).needed).toBe(true);
  });
  it("stays open where leakage or electrode are missing", () => {
    expect(verdicts({ leakageCurrent: missing("l"), electrodeResistance: missing("e") })).toBe(
      "leakage-within-share open, electrode-disconnects open",
    );
  });
});

describe("stated device", () => {
  const device = { type: "B", ratedResidualCurrent: "0.3 A", feed: "bidirectional" } as const;
  it("is judged by type, feed, leakage and electrode", () => {
    expect(verdicts({ device })).toBe(
      "residual-type-allowed met, residual-device-bidirectional met, leakage-within-share met, electrode-disconnects met",
    );
    expect(verdicts({ device: { ...device, type: "A", feed: "one way" } })).toContain(
      "residual-type-allowed not met, residual-device-bidirectional not met",
    );
    expect(verdicts({ device: { ...device, ratedResidualCurrent: missing("rcd") } })).toContain(
      "leakage-within-share open, electrode-disconnects open",
    );
  });
  it("is missed in a TT supply, and may be absent elsewhere", () => {
    expect(verdicts({ device: "none" })).toBe("residual-type-allowed not met");
    expect(verdicts({ device: "none", earthing: "TN-S" })).toBe("");
    expect(verdicts({ device: "none", earthing: missing("supply.earthing") })).toBe("residual-type-allowed open");
  });
});

describe("device upstream", () => {
  const upstream = { type: "A", ratedResidualCurrent: "0.09 A", delay: "general" } as const;
  const device = { type: "B", ratedResidualCurrent: "0.03 A", feed: "bidirectional" } as const;
  it("must not be blinded, and should be delayed and less sensitive", () => {
    expect(verdicts({ device, upstream })).toContain(
      "upstream-delayed not met, upstream-less-sensitive met, upstream-not-blinded not met",
    );
    expect(
      verdicts({ device, upstream: { ...upstream, type: "B", delay: "S", ratedResidualCurrent: "0.089 A" } }),
    ).toContain("upstream-delayed met, upstream-less-sensitive not met, upstream-not-blinded met");
    expect(verdicts({ device, upstream, declaredType: "A" })).toContain("upstream-not-blinded met");
    expect(verdicts({ device, upstream: missing("supply.upstreamRcd") })).toContain("upstream-not-blinded open");
    expect(verdicts({ device: "none", earthing: "TN-S", upstream })).toBe("upstream-not-blinded not met");
    expect(verdicts({ upstream })).toContain("upstream-less-sensitive met");
  });
});
