import { describe, expect, it } from "vitest";
import {
  type Cable,
  conductorProperties,
  routeTemperature,
  sizeConductor,
  type SizingRequest,
  type Stretch,
} from "../../src/conductor/index.js";
import { missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { problemsOf } from "./problems.js";

const cable: Cable = { kind: "multi-core", conductor: "copper", insulation: "PVC" };
const onWall: Stretch = { place: "wall", length: "18 m", ambient: "30 °C", grouped: 0, referenceMethod: "C" };
const request = (changes: Partial<SizingRequest> = {}): SizingRequest => ({
  at: "INV1-Main",
  cable,
  stretches: [onWall],
  loaded: 3,
  wiring: "IEC 60364:2009-2017",
  carries: [{ what: "breaker", current: "32 A" }],
  ...changes,
});

describe("size of a conductor", () => {
  it.each([
    ["31.9 A", "4 mm²"],
    ["32 A", "4 mm²"],
    ["32.1 A", "6 mm²"],
    ["5 A", "1.5 mm²"],
  ])("for %s is %s", (current, name) => {
    expect(sizeConductor(request({ carries: [{ what: "breaker", current }] })).name).toBe(name);
  });

  it("says why each smaller size fails, and what fixed the size", () => {
    const { choice, fixedBy } = sizeConductor(request());
    expect(choice!.rejected.map(({ size }) => size.text)).toEqual(["1.5", "2.5"]);
    expect(fixedBy.map(({ id, because }) => [id, because])).toEqual([
      ["conductor/within-ampacity/INV1-Main/breaker", "the stretch “wall” governs"],
    ]);
  });

  it("verifies a stated size", () => {
    const small = sizeConductor(request({ size: "2.5 mm2" }));
    expect(small.checks.map(({ id, verdict }) => [id, verdict])).toEqual([
      ["conductor/size-tabulated/INV1-Main", "met"],
      ["conductor/within-ampacity/INV1-Main/breaker", "not met"],
      ["conductor/section-at-least-minimum/INV1-Main", "met"],
    ]);
    const thin = sizeConductor(request({ size: "1 mm2" }));
    expect(thin.checks.map(({ id, verdict }) => [id, verdict])).toEqual([
      ["conductor/size-tabulated/INV1-Main", "not met"],
    ]);
    expect(thin.ampacity).toBeNull();
  });

  it("has no size where none carries the current", () => {
    const { size, checks } = sizeConductor(request({ carries: [{ what: "breaker", current: "630 A" }] }));
    expect([size, checks[0]!.verdict]).toEqual([null, "not met"]);
  });

  it("stays open without the ambient, and takes the smallest size that nothing refuses", () => {
    const { name, checks } = sizeConductor(
      request({ stretches: [{ ...onWall, ambient: missing("routes[1].stretches[0].ambient") }] }),
    );
    expect(name).toBe("1.5 mm²");
    expect(checks[0]).toMatchObject({ verdict: "open", missing: ["routes[1].stretches[0].ambient"] });
  });

  it("keeps aluminium at 16 mm² and more, and copper at 1.5 mm²", () => {
    const aluminium = { ...cable, conductor: "aluminium" as const };
    expect(sizeConductor(request({ cable: aluminium, carries: [{ what: "x", current: "5 A" }] })).name).toBe("16 mm²");
    const check = sizeConductor(request({ cable: aluminium, size: "10 mm2" })).checks.find(({ id }) =>
      id.includes("minimum"),
    );
    expect(check!.verdict).toBe("not met");
  });

  it("refuses a size to choose on a stretch whose ampacity is stated", () => {
    expect(
      problemsOf(() => sizeConductor(request({ stretches: [{ ...onWall, statedAmpacity: "40 A" }] })))[0]!.code,
    ).toBe("contradiction");
    expect(
      sizeConductor(request({ size: "6 mm2", stretches: [{ ...onWall, statedAmpacity: "40 A" }] })).checks.at(-2)!
        .limit,
    ).toMatchObject({ text: "40" });
  });

  it("asks other subjects for their checks of a size", () => {
    const seen: string[] = [];
    sizeConductor(
      request({
        further: (size) => {
          seen.push(size.text);
          return [];
        },
      }),
    );
    expect(seen[0]).toBe("1.5");
  });
});

describe("terminals", () => {
  const verdicts = (changes: Partial<SizingRequest>): Readonly<Record<string, string | undefined>> =>
    Object.fromEntries<string>(
      sizeConductor(request({ size: "4 mm2", designCurrent: "16 A", ...changes })).checks.map(
        ({ id, verdict }) => [id.split("/")[1]!, verdict] as const,
      ),
    );

  it.each([
    ["4 mm2", "10 mm2", "met", "met"],
    ["4.1 mm2", "10 mm2", "not met", "met"],
    ["1.5 mm2", "3.9 mm2", "met", "not met"],
  ] as const)("clamp %s to %s", (low, high, small, large) => {
    const got = verdicts({ terminals: [{ at: "INV1", range: [low, high] }] });
    expect([got["terminal-holds-small"], got["terminal-holds-large"]]).toEqual([small, large]);
  });

  it("stay open where the maker says nothing", () => {
    const open = missing("inverters[0].terminals.ac");
    expect(
      verdicts({
        terminals: [{ at: "INV1", range: open, temperature: missing("inverters[0].terminals.temperature") }],
      }),
    ).toMatchObject({
      "terminal-holds-small": "open",
      "terminal-holds-large": "open",
      "conductor-cool-at-terminal": "open",
    });
  });

  it("take aluminium only where they are declared for it", () => {
    const aluminium = { cable: { ...cable, conductor: "aluminium" as const }, size: "16 mm2" };
    const metal = (terminal: object) =>
      verdicts({ ...aluminium, terminals: [{ at: "INV1", ...terminal }] })["terminal-takes-metal"];
    expect([
      metal({}),
      metal({ aluminium: false }),
      metal({ aluminium: true }),
      metal({ aluminium: missing("x") }),
    ]).toEqual(["not met", "not met", "met", "open"]);
  });

  it("weigh the conductor's temperature at the design current", () => {
    // 16 A of 32 A: a quarter of 40 K above 30 °C.
    const cool = (temperature: string) =>
      verdicts({ terminals: [{ at: "INV1", temperature }] })["conductor-cool-at-terminal"];
    expect([cool("39.9 °C"), cool("40 °C"), cool("40.1 °C")]).toEqual(["not met", "met", "met"]);
    const { ampacity } = sizeConductor(request({ size: "4 mm2" }));
    expect((routeTemperature(ampacity!, "16 A") as Quantity).text).toBe("40");
  });
});

describe("properties of a conductor", () => {
  const base = { cable, temperature: "70 °C", wiring: "IEC 60364:2009-2017", direct: false, loaded: 3 } as const;
  const ohms = (changes: object): readonly (string | undefined)[] => {
    const { resistancePerLength, reactancePerLength } = conductorProperties({ ...base, size: "4 mm²", ...changes });
    return [resistancePerLength.in("Ω/km").show({ digits: 6 }), reactancePerLength?.in("Ω/km").text];
  };

  it("come from the class, the metal and the coating", () => {
    expect(ohms({})).toEqual(["5.51586 Ω/km", "0.08"]);
    expect(ohms({ direct: true })).toEqual(["5.51586 Ω/km", undefined]);
    expect(ohms({ cable: { kind: "PV" }, direct: true, temperature: "20 °C" })[0]).toBe("5.09 Ω/km");
    expect(ohms({ cable: { ...cable, conductorClass: "class 5" }, temperature: "20 °C" })[0]).toBe("4.95 Ω/km");
    expect(ohms({ cable: { ...cable, conductor: "aluminium" }, size: "16 mm²", temperature: "20 °C" })[0]).toBe(
      "1.91 Ω/km",
    );
    expect(
      problemsOf(() =>
        ohms({ cable: { ...cable, conductor: "aluminium", conductorClass: "class 5" }, size: "16 mm²" }),
      )[0]!.code,
    ).toBe("not-tabulated");
  });

  it("are shared by conductors in parallel", () => {
    expect(ohms({ cable: { ...cable, parallel: 2 }, temperature: "20 °C" })).toEqual(["2.305 Ω/km", "0.04"]);
  });

  it("carry the skin effect from 185 mm² on, and the frequency and formation in the reactance", () => {
    expect(ohms({ size: "150 mm²", temperature: "20 °C" })[0]).toBe("0.124 Ω/km");
    expect(ohms({ size: "185 mm²", temperature: "20 °C" })[0]).toBe("0.102584 Ω/km");
    const single = { cable: { kind: "single-core", conductor: "copper", insulation: "XLPE" } };
    expect([
      ohms({ ...single })[1],
      ohms({ ...single, arrangement: "flat" })[1],
      ohms({ ...single, arrangement: "spaced" })[1],
    ]).toEqual(["0.08", "0.09", "0.13"]);
    expect(ohms({ frequency: "60 Hz" })[1]).toBe("0.096");
  });

  it("follow chapter 9 of NFPA 70 from 75 °C", () => {
    const american = {
      wiring: "NFPA 70:2023",
      cable: { kind: "single-core", conductor: "copper", insulation: "THWN-2" },
      size: "10 AWG",
      temperature: "75 °C",
    };
    expect(ohms({ ...american, direct: true })[0]).toBe("4.07 Ω/km");
    expect(ohms({ ...american, raceway: "PVC" })).toEqual(["3.9 Ω/km", "0.164"]);
    expect(ohms(american)).toEqual(["3.9 Ω/km", "0.207"]);
    expect(ohms({ ...american, size: "700 kcmil" })[1]).toBe("0.157");
    expect(ohms({ ...american, cable: { kind: "PV" }, direct: true, temperature: "50 °C" })[0]).toBe("3.88475 Ω/km");
  });
});
