import { fc, it as property } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { missing } from "../../src/formula/index.js";
import {
  type BreakerQuestion,
  chooseBreaker,
  inverterOutputCurrent,
  largestProtectingRating,
} from "../../src/protection/index.js";

const iec: BreakerQuestion = {
  at: "INV1",
  wiring: "IEC 60364:2009-2017",
  kind: "miniature breaker",
  rating: "choose",
  designCurrent: "16 A",
  ampacity: "32 A",
  largestDevice: "32 A",
  ambientFactor: "1",
  neighboursLoaded: false,
};
const verdict = (question: BreakerQuestion, rule: string): string | undefined =>
  chooseBreaker(question).checks.find(({ rule: { id } }) => id === `protection/${rule}`)?.verdict;

describe("breaker by IEC", () => {
  it.each([
    ["15.9", "16"],
    ["16", "16"],
    ["16.1", "20"],
    ["32", "32"],
  ])("for %s A is the next preferred rating, %s A", (current, due) => {
    expect(chooseBreaker({ ...iec, designCurrent: `${current} A` }).rating?.text).toBe(due);
  });

  it("says what the next smaller rating fails, and that none fits", () => {
    const { fixedBy } = chooseBreaker({ ...iec, designCurrent: "20.1 A" });
    expect(fixedBy.map(({ rule: { id } }) => id)).toContain("protection/design-current-within-rating");
    expect(chooseBreaker({ ...iec, designCurrent: "32.1 A" }).rating).toBeNull();
    expect(chooseBreaker({ ...iec, designCurrent: "21 A", ampacity: "24 A" }).rating).toBeNull();
  });

  it("is judged exactly at the ampacity, at the maker's largest device and at 45 per cent overload", () => {
    const at = { ...iec, rating: "25 A", designCurrent: "20 A" };
    expect([
      verdict({ ...at, ampacity: "25 A" }, "rating-within-ampacity"),
      verdict({ ...at, ampacity: "24.9 A" }, "rating-within-ampacity"),
    ]).toEqual(["met", "not met"]);
    expect([
      verdict({ ...at, largestDevice: "25 A" }, "rating-within-largest-device"),
      verdict({ ...at, largestDevice: "24.9 A" }, "rating-within-largest-device"),
    ]).toEqual(["met", "not met"]);
    const fuse = { ...at, kind: "gG fuse", rating: "35 A" } as const;
    // 1.6 · 35 A = 56 A = 1.45 · 38.62… A: the fuse asks for more cable than its rating.
    expect([
      verdict({ ...fuse, ampacity: "38 A" }, "tripping-within-overload"),
      verdict({ ...fuse, ampacity: "39 A" }, "tripping-within-overload"),
    ]).toEqual(["not met", "met"]);
    expect(verdict({ ...at, ampacity: "25 A" }, "tripping-within-overload")).toBe("met");
  });

  it("leaves out the cable on the first pass, and is open where a finding is missing", () => {
    const first = Object.fromEntries(
      Object.entries(iec).filter(([key]) => key !== "ampacity"),
    ) as unknown as BreakerQuestion;
    expect(chooseBreaker(first).checks.map(({ rule: { id } }) => id)).not.toContain(
      "protection/rating-within-ampacity",
    );
    const open = chooseBreaker({
      ...iec,
      ampacity: missing("routes[1].cable.size"),
      largestDevice: missing("inverters[0].maximumAcDevice"),
    });
    expect(open.rating?.text).toBe("16");
    expect(open.checks.flatMap((check) => check.missing)).toEqual([
      "routes[1].cable.size",
      "routes[1].cable.size",
      "inverters[0].maximumAcDevice",
    ]);
  });

  it("of other kinds comes from its own series and knows its tripping current", () => {
    expect(chooseBreaker({ ...iec, kind: "gG fuse" }).conventionalTrippingCurrent?.text).toBe("25.6");
    expect(chooseBreaker({ ...iec, kind: "moulded-case breaker" }).conventionalTrippingCurrent?.text).toBe("20.8");
  });
});

describe("a breaker loaded to more than 80 per cent, or beside loaded ones", () => {
  const ambientFactor = missing("routes[1].breaker.ambientFactor");
  const place = "design-current-within-corrected-rating";
  it("is open without the maker's correction, and met at exactly 80 per cent on its own", () => {
    const stated = { ...iec, rating: "25 A", ambientFactor };
    expect(verdict({ ...stated, designCurrent: "20 A" }, place)).toBe("met");
    expect(verdict({ ...stated, designCurrent: "20.1 A" }, place)).toBe("open");
    expect(verdict({ ...stated, designCurrent: "20 A", neighboursLoaded: true }, place)).toBe("open");
    const unknown = chooseBreaker({ ...stated, neighboursLoaded: missing("boards[0].neighbours") });
    expect(unknown.checks.at(-1)?.missing).toEqual(["routes[1].breaker.ambientFactor", "boards[0].neighbours"]);
  });
  it("is judged exactly with it", () => {
    const stated = { ...iec, rating: "25 A", ambientFactor: "0.9", neighboursLoaded: true };
    expect([
      verdict({ ...stated, designCurrent: "22.5 A" }, place),
      verdict({ ...stated, designCurrent: "22.6 A" }, place),
    ]).toEqual(["met", "not met"]);
  });
});

describe("breaker by NEC", () => {
  const nec: BreakerQuestion = {
    ...iec,
    wiring: "NFPA 70:2020",
    kind: "NEC breaker",
    designCurrent: "32 A",
    ampacity: "40 A",
    largestDevice: "60 A",
  };
  it.each([
    ["32", "40"],
    ["32.1", "45"],
    ["8", "15"],
  ])("for %s A continuous is %s A", (current, due) => {
    expect(chooseBreaker({ ...nec, designCurrent: `${current} A`, ampacity: "60 A" }).rating?.text).toBe(due);
  });
  it("may be the next standard size above the ampacity, up to 800 A, and never above a small conductor's limit", () => {
    expect(verdict({ ...nec, ampacity: "36 A", rating: "40 A" }, "rating-protects-conductor")).toBe("met");
    expect(verdict({ ...nec, ampacity: "35 A", rating: "40 A" }, "rating-protects-conductor")).toBe("not met");
    const small = { ...nec, rating: "30 A", designCurrent: "20 A", smallConductorLimit: "30 A" };
    expect([
      verdict(small, "rating-within-small-conductor-limit"),
      verdict({ ...small, smallConductorLimit: "20 A" }, "rating-within-small-conductor-limit"),
    ]).toEqual(["met", "not met"]);
    const largest = (ampacity: string): string =>
      largestProtectingRating({ ampacity, kind: "NEC breaker", wiring: "NFPA 70:2023" }).text;
    expect([
      largest("9 A"),
      largest("175 A"),
      largest("176 A"),
      largest("701 A"),
      largest("801 A"),
      largest("6001 A"),
    ]).toEqual(["10", "175", "200", "800", "801", "6001"]);
  });
  it("refuses a kind of NEC practice under other rules", () => {
    expect(() => chooseBreaker({ ...nec, wiring: "BS 7671:2018" })).toThrow("NFPA 70");
  });
});

describe("output current", () => {
  it("is the maker's, else the apparent power at a low supply", () => {
    const maximumAcCurrent = missing("inverters[0].maximumAcCurrent");
    expect(
      inverterOutputCurrent({ phases: 3, apparentPower: "15 kVA", acVoltage: "400 V", maximumAcCurrent }).show(),
    ).toBe("24.06 A");
    expect(
      inverterOutputCurrent({ phases: 1, apparentPower: "4.6 kVA", acVoltage: "230 V", maximumAcCurrent }).show(),
    ).toBe("22.22 A");
    expect(
      inverterOutputCurrent({ phases: 1, apparentPower: "4.6 kVA", acVoltage: "230 V", maximumAcCurrent: "21 A" }).text,
    ).toBe("21");
  });
});

describe("laws", () => {
  const order = ["met", "open", "not met"];
  const current = fc.integer({ min: 10, max: 600 }).map((tenths) => tenths / 10);

  property.prop([current, current])("more current never asks for a smaller breaker", (a, b) => {
    const rated = (designCurrent: number): number =>
      chooseBreaker({ ...iec, designCurrent, ampacity: "200 A", largestDevice: "125 A" }).rating?.number ?? Infinity;
    const [low, high] = [Math.min(a, b), Math.max(a, b)];
    expect(rated(low)).toBeLessThanOrEqual(rated(high));
  });

  property.prop([current, current, fc.constantFrom("6 A", "10 A", "16 A", "20 A", "25 A", "32 A", "40 A", "63 A")])(
    "a stated breaker never gets better with more current",
    (a, b, rating) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      const judge = (designCurrent: number): number[] =>
        chooseBreaker({ ...iec, rating, designCurrent, ambientFactor: missing("x") }).checks.map((check) =>
          order.indexOf(check.verdict),
        );
      const worse = judge(high);
      judge(low).forEach((place, index) => expect(worse[index]).toBeGreaterThanOrEqual(place));
    },
  );
});
