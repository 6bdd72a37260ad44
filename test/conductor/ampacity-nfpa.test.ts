import { describe, expect, it } from "vitest";
import {
  ampacityOf,
  type Cable,
  readSize,
  routeAmpacity,
  sizeConductor,
  sizeName,
  smallConductorLimit,
  type Stretch,
  type WiringRules,
} from "../../src/conductor/index.js";
import { isMissing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { problemsOf } from "./problems.js";

const wire: Cable = { kind: "single-core", conductor: "copper", insulation: "THWN-2" };
const conduit: Stretch = { place: "conduit", length: "20 m", ambient: "30 °C", grouped: 0 };

function amperes(
  changes: Partial<Stretch>,
  cable: Cable = wire,
  wiring: WiringRules = "NFPA 70:2023",
  size = "10 AWG",
): string {
  return (ampacityOf({ cable, size, stretch: { ...conduit, ...changes }, loaded: 2, wiring }).ampacity as Quantity)
    .text;
}

describe("ampacity after NFPA 70", () => {
  it("takes 310.16 in a raceway and 310.17 for single conductors in free air", () => {
    expect(amperes({})).toBe("40");
    expect(amperes({ place: "free air" })).toBe("55");
    expect(amperes({ place: "free air" }, { ...wire, kind: "multi-core" })).toBe("40");
    expect(amperes({}, { ...wire, conductor: "aluminium" })).toBe("35");
  });

  it("takes the top of an ambient band", () => {
    expect([amperes({ ambient: "45 °C" }), amperes({ ambient: "45.1 °C" }), amperes({ ambient: "47 °C" })]).toEqual([
      "34.8",
      "32.8",
      "32.8",
    ]);
    expect(amperes({ ambient: "116 °F" })).toBe("32.8");
  });

  it("counts every current-carrying conductor", () => {
    expect([amperes({ grouped: 1 }), amperes({ grouped: 2 }), amperes({ grouped: 3 })]).toEqual(["32", "32", "28"]);
    expect(amperes({ currentCarryingConductors: 3 })).toBe("40");
    expect(amperes({ currentCarryingConductors: 4 })).toBe("32");
    expect(amperes({ currentCarryingConductors: 60 })).toBe("14");
  });

  it("adjusts nothing in a raceway of 600 mm and less, nor for spaced conductors", () => {
    expect([
      amperes({ grouped: 3, length: "599 mm" }),
      amperes({ grouped: 3, length: "600 mm" }),
      amperes({ grouped: 3, length: "601 mm" }),
    ]).toEqual(["40", "40", "28"]);
    expect(amperes({ grouped: 3, arrangement: "spaced" })).toBe("40");
  });

  // Below the clearance 38 °C become 71 °C, for which 90 °C insulation has 0.5.
  it.each([
    ["NFPA 70:2017", "22.9 mm", "20"],
    ["NFPA 70:2017", "23 mm", "36.4"],
    ["NFPA 70:2020", "22.9 mm", "20"],
    ["NFPA 70:2020", "23.1 mm", "36.4"],
    ["NFPA 70:2023", "18.9 mm", "20"],
    ["NFPA 70:2023", "19 mm", "36.4"],
    ["NFPA 70:2023", "19.1 mm", "36.4"],
  ] as const)("%s, %s above the roof", (wiring, heightAboveRoof, expected) => {
    expect(amperes({ place: "roof", ambient: "38 °C", heightAboveRoof }, wire, wiring)).toBe(expected);
  });

  it("leaves a rooftop stretch open without its height, and exempts XHHW-2", () => {
    const { ampacity } = ampacityOf({
      cable: wire,
      size: "10 AWG",
      stretch: { ...conduit, place: "roof" },
      loaded: 2,
      wiring: "NFPA 70:2023",
    });
    expect(isMissing(ampacity) && ampacity.missing).toEqual(["stretches[].heightAboveRoof"]);
    expect(amperes({ place: "roof" }, { ...wire, insulation: "XHHW-2" })).toBe("40");
  });
});

describe("conductors of photovoltaic circuits", () => {
  it("takes the wide bands of 2017 and the narrow ones later", () => {
    expect(amperes({ place: "free air", ambient: "62 °C" }, { kind: "PV" }, "NFPA 70:2017")).toBe("31.9");
    expect(amperes({ place: "free air", ambient: "62 °C" }, { kind: "PV" }, "NFPA 70:2020")).toBe("35.75");
  });

  it("takes 105 °C and 125 °C conductors in a raceway from their own table", () => {
    expect(amperes({ ambient: "70 °C" }, { kind: "PV", insulation: "PV wire 105 °C" }, "NFPA 70:2020")).toBe("31.28");
    expect(amperes({ ambient: "70 °C" }, { kind: "PV", insulation: "PV wire 125 °C" }, "NFPA 70:2020")).toBe("38");
    expect(
      problemsOf(() => amperes({ place: "free air" }, { kind: "PV", insulation: "PV wire 105 °C" }))[0]!.code,
    ).toBe("refused");
    expect(problemsOf(() => amperes({}, { kind: "PV", insulation: "PV wire 125 °C" }, "NFPA 70:2017"))[0]!.code).toBe(
      "refused",
    );
  });

  it("refuses an insulation of the other family, and a section in mm²", () => {
    expect(problemsOf(() => amperes({}, { ...wire, insulation: "PVC" }))[0]!.code).toBe("refused");
    expect(problemsOf(() => amperes({}, wire, "NFPA 70:2023", "4 mm²"))[0]!.code).toBe("not-in-list");
    expect(problemsOf(() => amperes({}, wire, "NFPA 70:2023", "10AWG"))[0]!.message).toContain("did you mean 10 AWG?");
  });
});

describe("short hot sections", () => {
  const hot = (length: string): Stretch => ({ ...conduit, ambient: "60 °C", length });
  const carried = (stretches: readonly Stretch[], shortSections?: "disregarded where allowed"): string =>
    (
      routeAmpacity({
        cable: wire,
        size: "10 AWG",
        stretches,
        loaded: 2,
        wiring: "NFPA 70:2023",
        ...(shortSections && { shortSections }),
      }).ampacity as Quantity
    ).text;

  it("count unless the caller lets them be disregarded, up to a tenth of the circuit and 3 m", () => {
    expect(carried([hot("2 m"), { ...conduit, length: "18 m" }])).toBe("28.4");
    expect(carried([hot("2 m"), { ...conduit, length: "18 m" }], "disregarded where allowed")).toBe("40");
    expect(carried([hot("2.1 m"), { ...conduit, length: "18 m" }], "disregarded where allowed")).toBe("28.4");
    expect(carried([hot("3 m"), { ...conduit, length: "97 m" }], "disregarded where allowed")).toBe("40");
    expect(carried([hot("3.1 m"), { ...conduit, length: "97 m" }], "disregarded where allowed")).toBe("28.4");
    expect(
      carried(
        [hot("1.5 m"), { ...hot("1.5 m"), ambient: "50 °C" }, { ...conduit, length: "27 m" }],
        "disregarded where allowed",
      ),
    ).toBe("40");
  });
});

describe("terminals and small conductors", () => {
  const sized = (continuousCurrent: string, temperature?: string) =>
    sizeConductor({
      at: "INV-PANEL",
      cable: wire,
      stretches: [conduit],
      loaded: 2,
      wiring: "NFPA 70:2023",
      carries: [{ what: "maximum current", current: continuousCurrent }],
      continuousCurrent,
      terminals: [{ at: "INV", ...(temperature === undefined ? {} : { temperature }) }],
    });

  it("holds 125 % of the current against the terminal's column without factors", () => {
    expect(sized("28 A", "75 °C").name).toBe("10 AWG");
    expect(sized("28.1 A", "75 °C").name).toBe("8 AWG");
    expect(sized("28 A", "75 °C").checks.map(({ id }) => id)).toContain("conductor/within-terminal-ampacity/INV");
  });

  it("takes the 60 °C column up to 100 A where the terminals are unmarked, then 75 °C", () => {
    expect(sized("28 A").name).toBe("8 AWG");
    expect(sized("80 A").name).toBe("1 AWG");
    expect(sized("80.8 A").name).toBe("2 AWG");
    expect(sized("28 A").checks.find(({ id }) => id.includes("terminal"))!.because).toBe(
      "the terminals are taken as unmarked",
    );
  });

  it("limits the device of small conductors only", () => {
    const limit = (size: string, metal: "copper" | "aluminium"): string | undefined =>
      smallConductorLimit(readSize(size, "NFPA 70:2023"), metal)?.text;
    expect([
      limit("14 AWG", "copper"),
      limit("12 AWG", "copper"),
      limit("10 AWG", "copper"),
      limit("8 AWG", "copper"),
    ]).toEqual(["15", "20", "30", undefined]);
    expect([limit("14 AWG", "aluminium"), limit("12 AWG", "aluminium"), limit("10 AWG", "aluminium")]).toEqual([
      undefined,
      "15",
      "25",
    ]);
  });

  it("names sizes as the trade does", () => {
    expect(["10 AWG", "4/0 AWG", "250 kcmil"].map((name) => sizeName(readSize(name, "NFPA 70:2020")))).toEqual([
      "10 AWG",
      "4/0 AWG",
      "250 kcmil",
    ]);
    expect(sizeName(readSize(2.5, "IEC 60364:2009-2017"))).toBe("2.5 mm²");
  });

  it("puts only 1/0 AWG and larger in parallel", () => {
    const verdict = (size: string): string =>
      sizeConductor({
        at: "X",
        cable: { ...wire, parallel: 2 },
        stretches: [conduit],
        loaded: 2,
        wiring: "NFPA 70:2023",
        carries: [{ what: "c", current: "50 A" }],
        size,
      }).checks.find(({ id }) => id === "conductor/parallel-large-enough/X")!.verdict;
    expect([verdict("1 AWG"), verdict("1/0 AWG"), verdict("2/0 AWG")]).toEqual(["not met", "met", "met"]);
  });
});
