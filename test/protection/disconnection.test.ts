import { fc, it as property } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import {
  type DisconnectionQuestion,
  disconnectionTime,
  faultLoop,
  longestCircuit,
  loopImpedance,
  loopImpedanceByAddition,
  proveDisconnection,
} from "../../src/protection/index.js";
import { given } from "../../src/quantity/index.js";

const electrode = missing("electrode.resistance");
const loopOf = (impedance: string) => ({
  resistance: given("0 Ω", "Ω"),
  reactance: given("0 Ω", "Ω"),
  impedance: given(impedance, "Ω"),
});
const base: DisconnectionQuestion = {
  at: "INV1",
  wiring: "IEC 60364:2009-2017",
  earthing: "TN-S",
  circuit: "final",
  lineToEarth: "230 V",
  kind: "miniature breaker",
  ratedCurrent: "20 A",
  characteristic: "B",
  operatingCurrent: missing("routes[0].breaker.operatingCurrent"),
  loop: loopOf("1 Ω"),
  lowestVoltage: "by the rules",
  residualCurrent: "none",
  electrodeResistance: electrode,
  insulationMonitoring: missing("supply.insulationMonitoring"),
};
const verdictOf = (other: Partial<DisconnectionQuestion>): string | undefined =>
  proveDisconnection({ ...base, ...other }).checks[0]?.verdict;

describe("TN", () => {
  // B20 trips at 100 A: 0.95 · 230 V / 100 A = 2.185 Ω.
  it("is judged exactly at the largest loop impedance", () => {
    expect([
      verdictOf({ loop: loopOf("2.184 Ω") }),
      verdictOf({ loop: loopOf("2.185 Ω") }),
      verdictOf({ loop: loopOf("2.186 Ω") }),
    ]).toEqual(["met", "met", "not met"]);
    expect([
      verdictOf({ loop: loopOf("2.07 Ω"), lowestVoltage: "stricter option" }),
      verdictOf({ loop: loopOf("2.071 Ω"), lowestVoltage: "stricter option" }),
    ]).toEqual(["met", "not met"]);
  });

  it.each([
    ["B", "2.185"],
    ["C", "1.0925"],
    ["D", "0.54625"],
  ] as const)("type %s needs a loop of at most %s Ω", (characteristic, due) => {
    const { largestLoopImpedance } = proveDisconnection({ ...base, characteristic });
    expect("text" in largestLoopImpedance && largestLoopImpedance.text).toBe(due);
  });

  it("takes the time of the circuit, and the gate of a gG fuse for it", () => {
    const final = proveDisconnection({ ...base, kind: "gG fuse" });
    expect(final).toMatchObject({ disconnectionTime: { text: "0.4" }, operatingCurrent: { text: "147" } });
    const distribution = proveDisconnection({ ...base, kind: "gG fuse", circuit: "distribution" });
    expect(distribution).toMatchObject({ disconnectionTime: { text: "5" }, operatingCurrent: { text: "85" } });
    expect(verdictOf({ kind: "gG fuse", ratedCurrent: "35 A" })).toBe("open");
    expect(verdictOf({ kind: "gG fuse", lineToEarth: "277 V" })).toBe("open");
    expect(verdictOf({ kind: "moulded-case breaker", operatingCurrent: "200 A" })).toBe("met");
  });

  it("falls back on a residual current device where the overcurrent device is too slow, but not in a PEN", () => {
    const loop = loopOf("5 Ω");
    expect(proveDisconnection({ ...base, loop, residualCurrent: "0.3 A" })).toMatchObject({
      by: "residual current device",
      operatingCurrent: { text: "1.5" },
    });
    expect(verdictOf({ loop, residualCurrent: "0.3 A" })).toBe("met");
    expect(verdictOf({ loop, residualCurrent: missing("routes[0].rcd") })).toBe("open");
    expect(verdictOf({ loop, earthing: "TN-C", residualCurrent: "0.3 A" })).toBe("not met");
    expect(proveDisconnection({ ...base, residualCurrent: "0.3 A" }).by).toBe("overcurrent device");
  });

  it("is open, naming what is missing", () => {
    const named = (other: Partial<DisconnectionQuestion>): readonly string[] | undefined =>
      proveDisconnection({ ...base, ...other }).checks[0]?.missing;
    expect(named({ loop: missing("supply.loop") })).toEqual(["supply.loop"]);
    expect(named({ earthing: missing("supply.earthing") })).toEqual(["supply.earthing"]);
    expect(named({ characteristic: missing("routes[0].breaker.characteristic") })).toEqual([
      "routes[0].breaker.characteristic",
    ]);
    expect(named({ lineToEarth: missing("supply.lineToNeutral") })).toEqual(["supply.lineToNeutral"]);
    expect(named({ kind: "moulded-case breaker" })).toEqual(["routes[0].breaker.operatingCurrent"]);
  });

  it("gives the smallest fault current at the lowest voltage", () => {
    const { smallestFaultCurrent } = proveDisconnection({ ...base, loop: loopOf("0.7 Ω") });
    expect("text" in smallestFaultCurrent && smallestFaultCurrent.show()).toBe("312.1 A");
  });
});

describe("TT", () => {
  const tt = { earthing: "TT", residualCurrent: "0.3 A" } as const;
  it("is proved by electrode and residual current device, exactly at the limit", () => {
    const at = (electrodeResistance: string): string =>
      proveDisconnection({ ...base, ...tt, electrodeResistance })
        .checks.map((check) => check.verdict)
        .join();
    expect([at("166.6 Ω"), at("166.7 Ω")]).toEqual(["met,met", "not met,met"]);
    const small = { ...base, ...tt, residualCurrent: "0.03 A" };
    expect(proveDisconnection({ ...small, electrodeResistance: "200 Ω" }).checks.map((check) => check.verdict)).toEqual(
      ["met", "met"],
    );
    expect(
      proveDisconnection({ ...small, electrodeResistance: "200.1 Ω" }).checks.map((check) => check.verdict),
    ).toEqual(["met", "not met"]);
  });
  it("is open without electrode or device, and needs a low loop without a residual current device", () => {
    expect(proveDisconnection({ ...base, ...tt }).checks[0]?.missing).toEqual(["electrode.resistance"]);
    expect(
      proveDisconnection({ ...base, ...tt, residualCurrent: missing("routes[0].rcd"), electrodeResistance: "50 Ω" })
        .checks[0]?.missing,
    ).toEqual(["routes[0].rcd"]);
    expect(proveDisconnection({ ...base, earthing: "TT", loop: loopOf("50 Ω") })).toMatchObject({
      by: "overcurrent device",
      disconnectionTime: { text: "0.2" },
    });
    expect(verdictOf({ earthing: "TT", loop: loopOf("50 Ω") })).toBe("not met");
  });
});

describe("IT and NEC", () => {
  it("accepts an isolated supply with monitoring, and leaves the proof open", () => {
    const checks = proveDisconnection({ ...base, earthing: "IT", insulationMonitoring: "present" }).checks;
    expect(checks.map((check) => check.verdict)).toEqual(["met", "open"]);
    expect(proveDisconnection({ ...base, earthing: "IT", insulationMonitoring: "none" }).checks[0]?.verdict).toBe(
      "not met",
    );
    expect(proveDisconnection({ ...base, earthing: "IT" }).checks[0]?.missing).toEqual(["supply.insulationMonitoring"]);
  });
  it("asks NEC practice for no such proof", () =>
    expect(proveDisconnection({ ...base, wiring: "NFPA 70:2023" }).checks).toEqual([]));
});

describe("times", () => {
  it.each([
    ["TN", "final", "120 V", "0.8"],
    ["TN", "final", "120.1 V", "0.4"],
    ["TN", "final", "230 V", "0.4"],
    ["TN", "final", "230.1 V", "0.2"],
    ["TN", "final", "400 V", "0.2"],
    ["TN", "final", "400.1 V", "0.1"],
    ["TT", "final", "120 V", "0.3"],
    ["TT", "final", "230 V", "0.2"],
    ["TT", "final", "277 V", "0.07"],
    ["TT", "final", "480 V", "0.04"],
    ["TN", "distribution", "230 V", "5"],
    ["TT", "distribution", "230 V", "1"],
  ] as const)("%s, %s, %s: %s s", (system, circuit, voltage, due) => {
    const time = disconnectionTime(system, circuit, voltage);
    expect("text" in time && time.text).toBe(due);
  });
});

describe("laws of the loop", () => {
  const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
  const order = ["met", "open", "not met"];

  property.prop([between(0.01, 0.5), between(0.01, 0.3), between(0.001, 0.02), between(0.0001, 0.002), between(1, 5)])(
    "at its longest length a circuit has exactly the largest loop, and plain addition never allows more",
    (resistance, reactance, perMetre, reactancePerMetre, largest) => {
      const source = { sourceResistance: resistance, sourceReactance: reactance };
      const length = longestCircuit({
        largestLoop: largest,
        ...source,
        loopResistancePerLength: perMetre,
        loopReactancePerLength: reactancePerMetre,
      });
      const impedance = loopImpedance({
        loopResistance: resistance + perMetre * length.number,
        loopReactance: reactance + reactancePerMetre * length.number,
      });
      expect(impedance.number / largest).toBeCloseTo(1, 9);
      const sum = loopImpedanceByAddition({
        externalImpedance: Math.hypot(resistance, reactance),
        loopResistancePerLength: Math.hypot(perMetre, reactancePerMetre),
        length,
      });
      expect(sum.number).toBeGreaterThanOrEqual(impedance.number * (1 - 1e-12));
    },
  );

  it("a longer circuit never improves disconnection, and often enough ends it", () => {
    let [flips, walks] = [0, 0];
    const ratings = fc.constantFrom("6 A", "10 A", "16 A", "20 A", "32 A", "63 A");
    const characteristics = fc.constantFrom("B" as const, "C" as const, "D" as const);
    fc.assert(
      fc.property(
        between(0.05, 2),
        between(1, 100),
        between(1, 100),
        ratings,
        characteristics,
        (external, a, b, ratedCurrent, characteristic) => {
          const judge = (length: number): number => {
            const part = {
              lineResistance: 0.008 * length,
              protectiveResistance: 0.012 * length,
              reactance: 0.0002 * length,
            };
            const loop = faultLoop({ resistance: external, reactance: "0.1 Ω" }, [part]);
            return order.indexOf(
              proveDisconnection({ ...base, ratedCurrent, characteristic, loop }).checks[0]!.verdict,
            );
          };
          const [short, long] = [judge(Math.min(a, b)), judge(Math.max(a, b))];
          expect(long).toBeGreaterThanOrEqual(short);
          walks += 1;
          if (long > short) flips += 1;
        },
      ),
    );
    expect(flips / walks).toBeGreaterThan(0.05);
  });

  it("refuses a circuit whose loop is used up at its origin", () => {
    const source = {
      sourceResistance: "0.3 Ω",
      sourceReactance: "0.4 Ω",
      loopResistancePerLength: "1 mΩ/m",
      loopReactancePerLength: "0 Ω/m",
    };
    expect(() => longestCircuit({ largestLoop: "0.5 Ω", ...source })).toThrow("already exceeds");
    expect(longestCircuit({ largestLoop: "0.501 Ω", ...source }).number).toBeGreaterThan(0);
  });

  it("adds resistance and reactance apart, and passes on everything that is missing", () => {
    const loop = faultLoop({ resistance: "0.1 Ω", reactance: "0.05 Ω" }, [
      { lineResistance: "0.1 Ω", protectiveResistance: "0.05 Ω", reactance: "0.1 Ω" },
      { lineResistance: "0.03 Ω", protectiveResistance: "0.02 Ω", reactance: "0.25 Ω" },
    ]);
    expect("impedance" in loop && [loop.resistance.text, loop.reactance.text, loop.impedance.show()]).toEqual([
      "0.3",
      "0.4",
      "0.5 Ω",
    ]);
    expect(faultLoop(missing("supply.loop"), [missing("routes[0].cable.size"), missing("supply.loop")])).toEqual({
      missing: ["supply.loop", "routes[0].cable.size"],
    });
  });
});
