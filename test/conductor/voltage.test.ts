import { describe, expect, it } from "vitest";
import {
  economicSizes,
  exactDropFromReceiving,
  exactDropFromSending,
  farEndVoltage,
  longestRun,
  lossHoursOf,
  routeVoltageChange,
  type RoutePart,
  smallestSizeForRun,
  supplementOfAnnexG,
  threePhaseChangeByPower,
  threePhaseDrop,
  twoConductorChangeByPower,
  twoConductorDrop,
  voltageLimitCheck,
  voltageLimits,
  voltageLimitShares,
} from "../../src/conductor/index.js";
import { isMissing, missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { problemsOf } from "./problems.js";

const wiring = "IEC 60364:2009-2017" as const;
const cable = { kind: "multi-core", conductor: "copper", insulation: "PVC" } as const;
const part: RoutePart = {
  length: "18 m",
  cable,
  size: "4 mm²",
  current: "8 A",
  temperature: "70 °C",
  powerFactor: 1,
  reactiveFactor: 0,
};
const volts = (quantity: unknown, digits = 5): string => (quantity as Quantity).show({ digits });

describe("voltage change of a route", () => {
  const change = (
    circuit: "d.c." | "single-phase" | "split-phase" | "three-phase",
    parts: readonly RoutePart[] = [part],
  ) => routeVoltageChange({ circuit, nominalVoltage: "400 V", wiring, parts });

  it("counts both conductors of two, and √3 of three", () => {
    // 5.515865 Ω/km, 18 m, 8 A
    expect(volts(change("d.c.").change)).toBe("1.5886 V");
    expect(volts(change("single-phase").change)).toBe("1.5886 V");
    expect(volts(change("split-phase").change)).toBe("1.5886 V");
    expect(volts(change("three-phase").change)).toBe("1.3757 V");
    expect(volts(change("three-phase").loss)).toBe("19.063 W");
    expect((change("three-phase").share as Quantity<"ratio">).in("%").show({ digits: 3 })).toBe("0.344 %");
  });

  it("adds stretches of different cables, currents and temperatures", () => {
    const parts = [part, { ...part, size: "10 mm²", current: "24 A", length: "30 m", temperature: "50 °C" }];
    const each = parts.map((one) => (change("d.c.", [one]).change as Quantity).number);
    expect((change("d.c.", parts).change as Quantity).number).toBeCloseTo(each[0]! + each[1]!, 12);
  });

  it("rises where reactive power flows with active power, and falls where it flows against it", () => {
    const at = (reactiveFactor: number): number =>
      (change("three-phase", [{ ...part, powerFactor: "0.8", reactiveFactor }]).change as Quantity).number;
    expect(at(0.6)).toBeGreaterThan(at(0));
    expect(at(-0.6)).toBeLessThan(at(0));
  });

  it("is open without a current, a temperature or a power factor, and names them", () => {
    const open = (changes: Partial<RoutePart>, circuit: "d.c." | "three-phase" = "three-phase") => {
      const { change: found } = change(circuit, [{ ...part, ...changes }]);
      return isMissing(found) ? found.missing : "known";
    };
    expect(open({ current: missing("a.current") })).toEqual(["a.current"]);
    expect(open({ temperature: missing("a.ambient") })).toEqual(["a.ambient"]);
    expect(open({ powerFactor: undefined as never })).toEqual(["powerFactor"]);
    expect(open({ powerFactor: undefined as never, reactiveFactor: undefined as never }, "d.c.")).toBe("known");
  });
});

describe("forms of voltage change", () => {
  const run = { resistance: "0.05 Ω", reactance: "0.02 Ω" };

  it("exact forms from both ends agree", () => {
    const common = { current: "150 A", ...run, powerFactor: "0.8", reactiveFactor: "0.6" };
    const drop = exactDropFromSending({ sendingVoltage: "230 V", ...common });
    const receivingVoltage = farEndVoltage({ nominalVoltage: "230 V", voltageChange: drop });
    expect(exactDropFromReceiving({ receivingVoltage, ...common }).number).toBeCloseTo(drop.number, 10);
    expect(problemsOf(() => exactDropFromSending({ sendingVoltage: "2 V", ...common }))[0]!.code).toBe("requirement");
  });

  it("power and current forms agree", () => {
    // 400 V, 50 A, cos φ 0.8: P = √3·400·50·0.8, Q = √3·400·50·0.6
    const root = Math.sqrt(3);
    const byPower = threePhaseChangeByPower({
      activePower: root * 400 * 50 * 0.8,
      reactivePower: root * 400 * 50 * 0.6,
      ...run,
      lineVoltage: "400 V",
    });
    const byCurrent = threePhaseDrop({
      length: "1 m",
      current: "50 A",
      resistancePerLength: "0.05 Ω/m",
      reactancePerLength: "0.02 Ω/m",
      powerFactor: "0.8",
      reactiveFactor: "0.6",
    });
    expect(byPower.number).toBeCloseTo(byCurrent.number, 9);
    const two = twoConductorChangeByPower({
      activePower: "3680 W",
      reactivePower: "-2760 var",
      ...run,
      nominalVoltage: "230 V",
    });
    const twoByCurrent = twoConductorDrop({
      length: "1 m",
      current: "20 A",
      resistancePerLength: "0.05 Ω/m",
      reactancePerLength: "0.02 Ω/m",
      powerFactor: "0.8",
      reactiveFactor: "-0.6",
    });
    expect(two.text).toBe(twoByCurrent.text);
  });
});

describe("longest run and smallest size", () => {
  const run = {
    circuit: "three-phase",
    wiring,
    cable,
    current: "16 A",
    temperature: "70 °C",
    voltageChange: "4 V",
  } as const;

  it("are inverse to each other at each size", () => {
    for (const size of ["1.5", "2.5", "4", "6", "10", "16"]) {
      const longest = longestRun({ ...run, size: `${size} mm²` });
      const below = smallestSizeForRun({ ...run, length: longest.number * 0.999 });
      const above = smallestSizeForRun({ ...run, length: longest.number * 1.001 });
      expect(below.chosen!.text).toBe(size);
      expect(Number(above.chosen!.text)).toBeGreaterThan(Number(size));
    }
  });

  it("work for direct current and for gauge sizes", () => {
    const american = {
      circuit: "d.c.",
      wiring: "NFPA 70:2023",
      cable: { kind: "PV" },
      current: "10 A",
      temperature: "75 °C",
      voltageChange: "8 V",
    } as const;
    // 4.226 Ω/km: 8 V / (2·10 A·R)
    expect(longestRun({ ...american, size: "10 AWG" }).show({ digits: 4 })).toBe("94.65 m");
    expect(smallestSizeForRun({ ...american, length: "94 m" }).chosen!.text).toBe("10380");
    expect(smallestSizeForRun({ ...american, length: "95 m" }).chosen!.text).toBe("16510");
    expect(smallestSizeForRun({ ...american, length: "1000 km" }).chosen).toBeNull();
  });
});

describe("limits of voltage change", () => {
  it("each say their document, stretch, current and plants, and have a value", () => {
    for (const { key, edition, stretch, current, plants } of voltageLimits) {
      expect([edition, stretch, current, plants].every((text) => text.length > 3)).toBe(true);
      expect(Number(voltageLimitShares({ changeLimit: key }).text)).toBeGreaterThan(0);
    }
  });

  it.each([
    ["1.99 %", "met"],
    ["2 %", "met"],
    ["2.01 %", "not met"],
  ] as const)("AS/NZS 4777.1 at %s: %s", (share, verdict) => {
    const check = voltageLimitCheck({ limit: "AS/NZS 4777.1:2016, inverter to point of supply", share, at: "INV1" });
    expect(check).toMatchObject({ verdict, id: "conductor/rise-within-as-nzs4777/INV1" });
    expect(check.rule.force).toBe("requirement");
    expect(check.because).toBe(
      "point of supply to the inverter terminals; rated current of the inverters; all inverters of the installation",
    );
  });

  it("annex G allows more beyond 100 m, and half a per cent at most", () => {
    const more = (length: string): string => supplementOfAnnexG({ length }).text;
    expect([
      more("99 m"),
      more("100 m"),
      more("101 m"),
      more("150 m"),
      more("200 m"),
      more("201 m"),
      more("400 m"),
    ]).toEqual(["0", "0", "0.005", "0.25", "0.5", "0.5", "0.5"]);
    const limit = "IEC 60364-5-52:2009, other uses, public supply";
    expect(voltageLimitCheck({ limit, share: "5.2 %", at: "x", length: "150 m" }).verdict).toBe("met");
    expect(voltageLimitCheck({ limit, share: "5.2 %", at: "x" }).verdict).toBe("not met");
    expect(voltageLimitCheck({ limit, share: missing("a"), at: "x" }).verdict).toBe("open");
  });
});

describe("losses and the economic size", () => {
  it("weigh hours with the square of the load", () => {
    expect(
      lossHoursOf([
        { loadShare: "1", duration: "200 h" },
        { loadShare: "50 %", duration: "1000 h" },
        { loadShare: 0, duration: "7560 h" },
      ]).text,
    ).toBe("450");
  });

  const request = {
    circuit: "d.c.",
    wiring,
    cable: { kind: "PV" },
    length: "40 m",
    cableLength: "80 m",
    maximumCurrent: "10 A",
    temperature: "50 °C",
    load: [{ loadShare: "1", duration: "1000 h" }],
    energyPrice: "0.2 money/kWh",
    yearsOfLife: 20,
    loadGrowth: 0,
    priceGrowth: 0,
    candidates: [
      { size: "4 mm²", lengthPrice: "1 money/m" },
      { size: "6 mm²", lengthPrice: "1.4 money/m" },
      { size: "10 mm²", lengthPrice: "2.6 money/m" },
    ],
  } as const;

  it("order candidates by what they cost over their life", () => {
    const sizes = economicSizes({ ...request, discountRate: "5 %" });
    expect(sizes.map(({ size }) => size)).toEqual(["6 mm²", "4 mm²", "10 mm²"]);
    // 4 mm²: 2·100·5.09·1.1179·0.04 = 45.52 W, 1000 h, 0.2, 12.462 years' worth
    expect(sizes[1]!.losses.show({ digits: 4 })).toBe("113.5 money");
  });

  it("take the years themselves without growth and discount", () => {
    const [cheapest] = economicSizes({ ...request, discountRate: 0, candidates: [request.candidates[0]] });
    expect(cheapest!.losses.show({ digits: 4 })).toBe("182.1 money");
  });
});
