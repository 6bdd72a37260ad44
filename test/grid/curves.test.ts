import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import "../harness/fast-check.js";
import {
  activeShareUnderReactivePriority,
  combinedActivePower,
  droopGradient,
  evaluateCurve,
  frequencyDroopResponse,
  gridRuleSets,
  interfaceSettings,
  overfrequencyReduction,
  rampOfTime,
  voltVarResponseInVolts,
} from "../../src/grid/index.js";
import { given } from "../../src/quantity/index.js";

const everyCurve = gridRuleSets.flatMap(({ key, supplies }) =>
  interfaceSettings(key, supplies[0]!).curves.map((curve) => [key, curve.key, curve.variant, curve] as const),
);

describe.each(everyCurve)("%s: %s, %s", (_rules, kind, _variant, curve) => {
  const overVoltage = kind === "volt-var" || kind === "volt-watt";
  const unit = curve.points[0]!.x.unit === "V" ? "V" : overVoltage ? "p.u." : "1";
  const xs = curve.points.map(({ x }) => x.number);
  const ys = curve.points.map(({ y }) => y.in("1").number);
  const at = (x: number) => evaluateCurve(curve, unit === "V" ? given(`${x} V`, "V") : given(x, unit)).number;
  const [start, end] = overVoltage ? [xs[0]! - (xs.at(-1)! - xs[0]!), 2 * xs.at(-1)! - xs[0]!] : [0, 1];

  it("passes through its points exactly", () => {
    for (const { x, y } of curve.points) expect(evaluateCurve(curve, x as never).text).toBe(y.in("1").text);
  });

  it("stands in the order of its abscissas", () => {
    expect(xs).toEqual([...xs].sort((a, b) => a - b));
  });

  test.prop([fc.integer({ min: 0, max: 1000 })])("stays within its ends", (thousandths) => {
    const y = at(Number((start + ((end - start) * thousandths) / 1000).toFixed(6)));
    expect(y).toBeGreaterThanOrEqual(Math.min(...ys));
    expect(y).toBeLessThanOrEqual(Math.max(...ys));
  });

  test.prop([fc.integer({ min: 0, max: 999 })])("does not jump", (thousandths) => {
    const x = (share: number) => Number((start + (end - start) * share).toFixed(6));
    const step = Math.abs(at(x((thousandths + 1) / 1000)) - at(x(thousandths / 1000)));
    const steepest = Math.max(
      ...xs
        .slice(1)
        .map((each, index) => (each === xs[index] ? 0 : Math.abs((ys[index + 1]! - ys[index]!) / (each - xs[index]!)))),
    );
    expect(step).toBeLessThanOrEqual((steepest * (end - start)) / 1000 + steepest * 2e-6 + 1e-9);
  });
});

describe("curves with points of one's own", () => {
  const points = {
    voltage1: "207 V",
    voltage2: "220 V",
    voltage3: "240 V",
    voltage4: "258 V",
    reactive1: "44 %",
    reactive2: 0,
    reactive3: 0,
    reactive4: "-60 %",
  } as const;

  it("are exact at a point and one digit on either side", () => {
    const at = (voltage: string) => voltVarResponseInVolts({ voltage, ...points }).text;
    expect([at("239.9 V"), at("240 V"), at("240.3 V")]).toEqual(["0", "0", "-0.01"]);
    expect([at("206.9 V"), at("258.1 V")]).toEqual(["0.44", "-0.6"]);
  });

  it("are refused out of order or with a jump", () => {
    expect(() => voltVarResponseInVolts({ voltage: "230 V", ...points, voltage1: "221 V" })).toThrow(
      "in the order of their voltages",
    );
    expect(() =>
      voltVarResponseInVolts({ voltage: "230 V", ...points, voltage3: "220 V", reactive3: "-10 %" }),
    ).toThrow("must not jump");
  });
});

describe("response to frequency", () => {
  const settings = { nominalFrequency: "60 Hz", deadBand: "0.036 Hz", droop: "0.05", availableShare: 1 } as const;
  const at = (frequency: string, activeShareBefore: number) =>
    frequencyDroopResponse({ frequency, activeShareBefore, ...settings }).text;

  it("rests inside the dead band, its ends included", () => {
    expect([at("60.036 Hz", 0.5), at("59.964 Hz", 0.5), at("60 Hz", 0.5)]).toEqual(["0.5", "0.5", "0.5"]);
    expect([at("60.066 Hz", 0.5), at("59.934 Hz", 0.5)]).toEqual(["0.49", "0.51"]);
  });

  it("ends at nothing and at what is available", () => {
    expect([at("65 Hz", 0.5), at("55 Hz", 0.5)]).toEqual(["0", "1"]);
  });

  test.prop([fc.integer({ min: 5500, max: 6500 }), fc.integer({ min: 0, max: 100 })])(
    "falls as the frequency rises",
    (hundredths, percent) => {
      const share = (f: number) =>
        frequencyDroopResponse({ frequency: `${f / 100} Hz`, activeShareBefore: percent / 100, ...settings }).number;
      expect(share(hundredths + 1)).toBeLessThanOrEqual(share(hundredths));
    },
  );

  it("reduces by 40 % a hertz at a droop of 5 %", () => {
    const reduction = (frequency: string) =>
      overfrequencyReduction({ frequency, startFrequency: "50.2 Hz", frequencyDroop: "5 %", nominalFrequency: "50 Hz" })
        .text;
    expect([
      reduction("50.2 Hz"),
      reduction("50.3 Hz"),
      reduction("51.5 Hz"),
      reduction("52.7 Hz"),
      reduction("60 Hz"),
    ]).toEqual(["0", "0.04", "0.52", "1", "1"]);
    expect(droopGradient({ frequencyDroop: "5 %", nominalFrequency: "50 Hz" }).text).toBe("40");
  });

  it("lets the lower of the two ceilings rule", () => {
    expect(combinedActivePower({ voltWattShare: "0.4", frequencyDroopShare: "0.302" }).text).toBe("0.302");
    expect(combinedActivePower({ voltWattShare: "0.4", frequencyDroopShare: "0.6013" }).text).toBe("0.4");
  });

  it("gives reactive power the priority", () => {
    expect(activeShareUnderReactivePriority({ activeShare: 1, reactiveShare: "-0.6" }).number).toBe(0.8);
    expect(activeShareUnderReactivePriority({ activeShare: "0.7", reactiveShare: "-0.6" }).text).toBe("0.7");
  });

  it("turns a time to full power into a ramp", () => {
    expect(rampOfTime({ rampTime: "10 min" }).text).toBe("10");
    expect(rampOfTime({ rampTime: "300 s" }).text).toBe("20");
  });
});
