import { describe, expect, it } from "vitest";
import { evaluateReading, expectedContinuity, residualTests } from "../../src/commissioning/index.js";
import { missing } from "../../src/formula/index.js";

describe("continuity", () => {
  it("reads what lengths and sections let expect, and a little for joints", () => {
    const { expected, high, testCurrent, sourceVoltage } = expectedContinuity([
      { resistancePerLength: "4.61 Ω/km", length: "18 m" },
      { resistancePerLength: "1.15 Ω/km", length: "10 m" },
    ]);
    expect([expected, high, testCurrent, ...sourceVoltage].map((each) => ("text" in each ? each.text : null))).toEqual([
      "0.09448",
      "0.14448",
      "0.2",
      "4",
      "24",
    ]);
  });

  it("takes another allowance for joints, and is missing where a conductor is", () => {
    expect(expectedContinuity([{ resistancePerLength: "1 Ω/km", length: "100 m" }], "0.02 Ω").high).toMatchObject({
      text: "0.12",
    });
    expect(expectedContinuity([{ resistancePerLength: missing("size"), length: "1 m" }]).high).toEqual(missing("size"));
    expect(() => expectedContinuity([])).toThrow("resistances");
  });

  it.each([
    ["0.14448 Ω", "within"],
    ["0.14449 Ω", "outside"],
    ["0 Ω", "within"],
  ])("%s is %s", (value, verdict) => {
    expect(evaluateReading({ reading: "continuity", at: "INV1-Board", value, high: "0.14448 Ω" }).verdict).toBe(
      verdict,
    );
  });
});

describe("test of a residual current device", () => {
  const texts = (delayed: boolean) =>
    residualTests({ ratedResidualCurrent: "30 mA", delayed }).map(({ key, current, opens, longest, shortest }) => [
      key,
      current.text,
      opens,
      longest?.text ?? null,
      shortest?.text ?? null,
    ]);

  it("stays closed at half, opens at once and at five times its rated residual current", () => {
    expect(texts(false)).toEqual([
      ["half", "0.015", false, null, null],
      ["once", "0.03", true, "0.3", null],
      ["five times", "0.15", true, "0.04", null],
    ]);
  });

  it("waits where it is delayed", () => {
    expect(texts(true).slice(1)).toEqual([
      ["once", "0.03", true, "0.5", "0.13"],
      ["five times", "0.15", true, "0.15", "0.05"],
    ]);
  });

  it.each([
    ["0.3 s", "within"],
    ["0.301 s", "outside"],
    ["0.13 s", "within"],
    ["0.129 s", "outside"],
  ])("a break time of %s is %s between 0.13 s and 0.3 s", (value, verdict) => {
    expect(evaluateReading({ reading: "breakTime", at: "R", value, low: "0.13 s", high: "0.3 s" }).verdict).toBe(
      verdict,
    );
  });

  it.each([
    ["30 mA", "within"],
    ["30.1 mA", "outside"],
    ["15 mA", "outside"],
    ["15.1 mA", "within"],
  ])("one that opens at %s is %s", (value, verdict) => {
    expect(evaluateReading({ reading: "residualCurrent", at: "R", value, low: "15 mA", high: "30 mA" }).verdict).toBe(
      verdict,
    );
  });
});

describe("measured loop", () => {
  it.each([
    ["0.58 Ω", "within"],
    ["0.581 Ω", "outside"],
  ])("%s is %s", (value, verdict) => {
    expect(evaluateReading({ reading: "loopImpedance", at: "R", value, high: "0.58 Ω" }).verdict).toBe(verdict);
  });
});
