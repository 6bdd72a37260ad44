import { fc, it as property } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import {
  largestFaultCurrent,
  longestConventionalCircuit,
  proveBackfeed,
  proveBoard,
  proveBreaking,
  proveSelectivity,
  proveTransformer,
  proveWithstand,
  threePhaseFault,
  transformerPath,
} from "../../src/protection/index.js";

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const verdicts = (checks: readonly { readonly verdict: string }[]): string =>
  checks.map(({ verdict }) => verdict).join(", ");

describe("fault level", () => {
  const supply = { lineToLine: "400 V", faultVoltageFactor: "1.05" };
  it("adds the chain part by part, resistance and reactance apart", () => {
    const fault = threePhaseFault(supply, [
      { resistance: "10 mΩ", reactance: "30 mΩ" },
      { resistance: "20 mΩ", reactance: "10 mΩ" },
    ]);
    // 1.05 · 400 V / (√3 · √(30² + 40²) mΩ) = 4849.7 A
    expect("current" in fault && [fault.impedance.in("mΩ").show(), fault.current.show()]).toEqual(["50 mΩ", "4850 A"]);
    expect(threePhaseFault(supply, [missing("supply.network"), { resistance: 1, reactance: 1 }])).toEqual({
      missing: ["supply.network"],
    });
  });

  property.prop([between(0.001, 0.1), between(0.001, 0.1), between(0, 0.1), between(0, 0.1)])(
    "more cable never raises the fault current",
    (r, x, more, moreX) => {
      const at = (parts: readonly { readonly resistance: number; readonly reactance: number }[]): number => {
        const fault = threePhaseFault(supply, parts);
        return "current" in fault ? fault.current.number : NaN;
      };
      const source = { resistance: r, reactance: x };
      expect(at([source, { resistance: more, reactance: moreX }])).toBeLessThanOrEqual(at([source]));
    },
  );

  it("adds what the inverters feed, and says what is missing", () => {
    const of = (...inverters: string[]) => largestFaultCurrent("6 kA", inverters);
    expect([of(), of("24 A", "8 A")].map((current) => "text" in current && current.text)).toEqual(["6000", "6032"]);
    expect(largestFaultCurrent(missing("supply.largestFaultCurrent"), [missing("inverters[0]")])).toEqual({
      missing: ["supply.largestFaultCurrent", "inverters[0]"],
    });
  });

  it("splits a transformer by its load loss", () => {
    const plate = { transformerPower: "400 kVA", shortCircuitVoltage: "6 %", lineToLine: "400 V" };
    const { impedance, path } = transformerPath({ ...plate, loadLoss: "4.8 kW" });
    expect(impedance.in("mΩ").text).toBe("24");
    expect("reactance" in path && [path.resistance.in("mΩ").text, path.reactance.in("mΩ").show({ digits: 5 })]).toEqual(
      ["4.8", "23.515 mΩ"],
    );
    expect(transformerPath({ ...plate, loadLoss: missing("transformer.loadLoss") }).path).toEqual({
      missing: ["transformer.loadLoss"],
    });
  });
});

describe("breaking capacity, back-up, selectivity, back-feed", () => {
  const question = { at: "INV1", largestFaultCurrent: "6 kA", breakingCapacity: "6 kA", backUp: null };
  it("is judged exactly at the capacity, alone or in a declared combination", () => {
    expect(verdicts(proveBreaking(question))).toBe("met");
    expect(verdicts(proveBreaking({ ...question, largestFaultCurrent: "6.001 kA" }))).toBe("not met");
    expect(verdicts(proveBreaking({ ...question, largestFaultCurrent: "10 kA", backUp: "10 kA" }))).toBe("met");
    expect(verdicts(proveBreaking({ ...question, largestFaultCurrent: "10.001 kA", backUp: "10 kA" }))).toBe("not met");
    expect(proveBreaking({ ...question, backUp: "10 kA" })[0]?.rule.id).toBe(
      "protection/fault-within-breaking-capacity",
    );
    expect(
      proveBreaking({ ...question, largestFaultCurrent: "9 kA", backUp: missing("breaker.backUp") })[0]?.missing,
    ).toEqual(["breaker.backUp"]);
    expect(
      proveBreaking({ ...question, largestFaultCurrent: missing("supply.largestFaultCurrent") })[0]?.missing,
    ).toEqual(["supply.largestFaultCurrent"]);
  });
  it("takes two gG fuses by their ratio, others by what is declared", () => {
    const selectivity = {
      at: "INV1",
      largestFaultCurrent: "6 kA",
      selectivityLimit: missing("supply.selectivity"),
      fuses: null,
    };
    expect(proveSelectivity(selectivity).missing).toEqual(["supply.selectivity"]);
    expect(proveSelectivity({ ...selectivity, selectivityLimit: "6 kA" }).verdict).toBe("met");
    const fuses = (upstream: string, behind: string): string =>
      proveSelectivity({ ...selectivity, fuses: { upstream, behind } }).verdict;
    expect([fuses("40 A", "25 A"), fuses("39.9 A", "25 A")]).toEqual(["met", "not met"]);
  });
  it("refuses a device marked for line and load", () => {
    const at = (marking: "not marked" | "bidirectional" | "line and load"): string =>
      proveBackfeed("INV1", marking).verdict;
    expect([at("not marked"), at("bidirectional"), at("line and load")]).toEqual(["met", "met", "not met"]);
    expect(proveBackfeed("INV1", missing("breaker.marking")).verdict).toBe("open");
  });
});

describe("withstand", () => {
  const question = {
    at: "INV1",
    section: "4 mm²",
    factor: "115",
    smallestFaultCurrent: "1454.64 A",
    trippingTime: "0.1 s",
    letThrough: "211600",
  } as const;
  // k²S² = (115 · 4)² = 211 600 A²s; √(211 600 / 0.1) = 1454.648… A
  it("is judged exactly at the energy that the conductor bears", () => {
    expect(verdicts(proveWithstand(question).checks)).toBe("met, met");
    expect(
      verdicts(proveWithstand({ ...question, smallestFaultCurrent: "1454.65 A", letThrough: "211601" }).checks),
    ).toBe("not met, not met");
  });
  it("is open without let-through, current or time", () => {
    const open = proveWithstand({
      ...question,
      letThrough: missing("breaker.letThrough"),
      trippingTime: missing("breaker.characteristic"),
    });
    expect(open.checks.map((check) => check.missing)).toEqual([["breaker.characteristic"], ["breaker.letThrough"]]);
  });
});

describe("board fed from two sides", () => {
  const board = {
    at: "Main board",
    busbarRating: "63 A",
    supplyDevice: "40 A",
    mainSwitch: "40 A",
    sourceCurrents: ["15 A", "8 A"],
  };
  it("is judged exactly at the busbar, the supply device and the main switch", () => {
    expect(verdicts(proveBoard(board))).toBe("met, met, met");
    expect(verdicts(proveBoard({ ...board, sourceCurrents: ["15 A", "8.1 A"] }))).toBe("not met, met, met");
    expect(verdicts(proveBoard({ ...board, supplyDevice: "23 A" }))).toBe("met, met, met");
    expect(verdicts(proveBoard({ ...board, supplyDevice: "22.9 A", mainSwitch: "22.9 A" }))).toBe(
      "met, not met, not met",
    );
    expect(verdicts(proveBoard({ ...board, mainSwitch: null }))).toBe("met, met");
  });
  it("is open, naming what is missing", () => {
    const open = proveBoard({
      ...board,
      busbarRating: missing("boards[0].busbarRating"),
      sourceCurrents: ["8 A", missing("inverters[1].maximumAcCurrent")],
    });
    expect(open.map((check) => check.missing.length)).toEqual([2, 1, 1]);
  });
});

describe("conventional method", () => {
  const circuit = {
    lineToEarth: "230 V",
    section: "2.5 mm²",
    material: "copper",
    sectionRatio: "1",
    magneticSetting: "100 A",
  } as const;
  it("counts 50 mm² as 47.5 and allows for the reactance of large conductors", () => {
    const length = (section: string): number =>
      longestConventionalCircuit({ ...circuit, section: `${section} mm²` }).number;
    const perArea = length("2.5") / 2.5;
    expect(length("50") / perArea).toBeCloseTo(47.5, 9);
    expect(length("120") / perArea).toBeCloseTo(120, 9);
    expect((length("150") / perArea) * 1.15).toBeCloseTo(150, 9);
    expect((length("185") / perArea) * 1.2).toBeCloseTo(185, 9);
    expect((length("240") / perArea) * 1.25).toBeCloseTo(240, 9);
    expect(() => length("300")).toThrow("240");
  });
  it("is shorter in aluminium, and with a smaller protective conductor", () => {
    const aluminium =
      longestConventionalCircuit({ ...circuit, material: "aluminium" }).number /
      longestConventionalCircuit(circuit).number;
    expect(aluminium).toBeCloseTo(0.023 / 0.037, 9);
    expect(
      longestConventionalCircuit({ ...circuit, sectionRatio: "2" }).number / longestConventionalCircuit(circuit).number,
    ).toBeCloseTo(2 / 3, 9);
  });
});

describe("transformer", () => {
  const base = {
    at: "T1",
    transformerPower: "220 kVA",
    apparentPowers: ["110 kVA", "110 kVA"],
    neutral: "earthed",
    allowedNeutrals: ["earthed"],
  } as const;
  it("carries its inverters exactly at its rating, with the neutral that they ask for", () => {
    expect(verdicts(proveTransformer(base))).toBe("met, met");
    expect(verdicts(proveTransformer({ ...base, transformerPower: "219.9 kVA", neutral: "not brought out" }))).toBe(
      "not met, not met",
    );
    const open = proveTransformer({
      ...base,
      apparentPowers: [missing("inverters[0].apparentPower")],
      neutral: missing("transformer.neutral"),
    });
    expect(open.flatMap((check) => check.missing)).toEqual(["inverters[0].apparentPower", "transformer.neutral"]);
  });
});
