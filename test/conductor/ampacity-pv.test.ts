import { describe, expect, it } from "vitest";
import { ampacityOf, cablePlaceChecks, type Stretch } from "../../src/conductor/index.js";
import { gradeOf, isMissing, missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { problemsOf } from "./problems.js";

const stretch: Stretch = { place: "loft", length: "16 m", ambient: "30 °C", grouped: 0 };

function laid(changes: Partial<Stretch>, size = "4 mm²") {
  return ampacityOf({
    cable: { kind: "PV" },
    size,
    stretch: { ...stretch, ...changes },
    loaded: 2,
    wiring: "IEC 60364:2009-2017",
  });
}
const show = (changes: Partial<Stretch>): string => (laid(changes).ampacity as Quantity).show({ digits: 4 });

describe("photovoltaic cable after EN 50618", () => {
  it("takes a pair as two loaded cables that touch, and never more than the table at 60 °C", () => {
    expect(show({})).toBe("44 A");
    expect(show({ ambient: "-20 °C" })).toBe("44 A");
    expect(show({ arrangement: "spaced" })).toBe("52 A");
  });

  it("holds the conductor to 90 °C unless the route says otherwise", () => {
    expect(show({ ambient: "75 °C" })).toBe("22 A");
    expect(show({ ambient: "75 °C", conductorLimit: "120 °C" })).toBe("36.96 A");
    expect(laid({}).conductorLimit!.show()).toBe("90 °C");
  });

  it("takes the lower of the square-root law and the cable's own table", () => {
    // At 60 °C the law gives √(60/60) = 1 for 120 °C; at 70 °C it lies below the table's 0.92.
    expect(show({ ambient: "60 °C", conductorLimit: "120 °C" })).toBe("44 A");
    expect(show({ ambient: "70 °C", conductorLimit: "120 °C" })).toBe("40.17 A");
  });

  it("reckons with 70 °C behind modules, or more where more is stated", () => {
    const temperature = (ambient: string): string =>
      (laid({ place: "behind modules", ambient }).ambient as Quantity).text;
    expect([temperature("40 °C"), temperature("69.9 °C"), temperature("70 °C"), temperature("70.1 °C")]).toEqual([
      "70",
      "70",
      "70",
      "70.1",
    ]);
    expect(show({ place: "behind modules", ambient: "40 °C" })).toBe("25.4 A");
  });

  it("groups other strings beside it", () => {
    expect(show({ grouped: 1 })).toBe("35.2 A");
    expect(show({ grouped: 11 })).toBe("19.8 A");
  });

  it("says what a reader must know of a hot conductor and of the sun", () => {
    expect(laid({ conductorLimit: "90 °C" }).notes).toEqual([]);
    expect(laid({ conductorLimit: "90.1 °C" }).notes).toHaveLength(1);
    expect(laid({ conductorLimit: "90 °C", sun: true }).notes[0]).toContain("sun");
  });

  it("is held from memory where the table is, and says so", () => {
    expect(gradeOf(laid({}).ampacity as Quantity)).toBe("memory");
  });

  it("stays open without an ambient, and is refused in the ground or where the air is as warm as the limit", () => {
    const { ampacity } = laid({ ambient: missing("routes[0].stretches[0].ambient") });
    expect(isMissing(ampacity) && ampacity.missing).toEqual(["routes[0].stretches[0].ambient"]);
    expect(problemsOf(() => laid({ place: "in ground" }))[0]!.code).toBe("refused");
    expect(problemsOf(() => laid({ ambient: "90 °C" }))[0]!.code).toBe("requirement");
    expect(problemsOf(() => laid({}, "300 mm²"))[0]!.code).toBe("not-tabulated");
  });
});

describe("cable type against place", () => {
  it.each([
    ["PV", "behind modules", "met"],
    ["PV", "in ground", "not met"],
    ["multi-core", "behind modules", "not met"],
    ["multi-core", "in ground", "met"],
    ["single-core", "roof", "not met"],
    ["single-core", "conduit", "met"],
  ] as const)("%s cable, %s: %s", (kind, place, verdict) => {
    const [check] = cablePlaceChecks({ kind }, [{ ...stretch, place }], "A-B");
    expect(check).toMatchObject({ verdict, id: `conductor/cable-fits-place/A-B/1 ${place}` });
  });
});
