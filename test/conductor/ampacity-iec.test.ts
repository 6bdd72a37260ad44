import { describe, expect, it } from "vitest";
import { ampacityOf, type Cable, routeAmpacity, type Stretch } from "../../src/conductor/index.js";
import { isMissing, missing } from "../../src/formula/index.js";
import type { Quantity } from "../../src/quantity/index.js";
import { problemsOf } from "./problems.js";

const wiring = "IEC 60364:2009-2017" as const;
const multi: Cable = { kind: "multi-core", conductor: "copper", insulation: "PVC" };
const single: Cable = { kind: "single-core", conductor: "copper", insulation: "XLPE" };
const bare: Cable = { kind: "multi-core", conductor: "copper" };
const onWall: Stretch = { place: "wall", length: "18 m", ambient: "30 °C", grouped: 0, referenceMethod: "C" };

function amperes(cable: Cable, size: string, stretch: Partial<Stretch>, loaded: 2 | 3 = 3): string {
  const { ampacity } = ampacityOf({ cable, size, stretch: { ...onWall, ...stretch }, loaded, wiring });
  return (ampacity as Quantity).text;
}

describe("ampacity after IEC 60364-5-52", () => {
  it("takes table, column and row of the cable as it is laid", () => {
    expect(amperes(multi, "4 mm²", {})).toBe("32");
    expect(amperes(multi, "4 mm²", {}, 2)).toBe("36");
    expect(amperes(multi, "4 mm²", { referenceMethod: "B2" })).toBe("27");
    expect(amperes({ ...multi, conductor: "aluminium" }, "25 mm²", {})).toBe("73");
    expect(amperes(multi, "4 mm²", { referenceMethod: "E" })).toBe("34");
    expect(amperes(single, "25 mm²", { referenceMethod: "F", arrangement: "flat" })).toBe("141");
    expect(amperes(single, "25 mm²", { referenceMethod: "F" })).toBe("135");
    expect(amperes(single, "25 mm²", { referenceMethod: "G", arrangement: "spaced" })).toBe("182");
    expect(amperes(single, "25 mm²", { referenceMethod: "G" })).toBe("161");
  });

  it("takes the warmer row of a temperature between two rows", () => {
    expect(amperes(multi, "4 mm²", { ambient: "40 °C" })).toBe("27.84");
    expect(amperes(multi, "4 mm²", { ambient: "40.1 °C" })).toBe("25.28");
    expect(amperes(multi, "4 mm²", { ambient: "39.9 °C" })).toBe("27.84");
    expect(amperes(multi, "4 mm²", { ambient: "-5 °C" })).toBe("39.04");
  });

  it("takes exactly one grouping table, and the next higher count", () => {
    expect(amperes(multi, "10 mm²", { grouped: 1 })).toBe("45.6");
    expect(amperes(multi, "10 mm²", { grouped: 1, arrangement: "touching" })).toBe("48.45");
    expect(amperes(multi, "10 mm²", { grouped: 9 })).toBe("25.65");
    expect(amperes(multi, "10 mm²", { grouped: 10 })).toBe("25.65");
    expect(amperes(multi, "10 mm²", { grouped: 15, arrangement: "touching" })).toBe("39.9");
    expect(
      amperes(multi, "10 mm²", { referenceMethod: "E", trayKind: "perforated", arrangement: "touching", grouped: 4 }),
    ).toBe("45.6");
    expect(
      amperes(multi, "10 mm²", { referenceMethod: "E", trayKind: "ladder", arrangement: "spaced", grouped: 2 }),
    ).toBe("60");
    expect(amperes(multi, "10 mm²", { grouped: 0, underCeiling: true })).toBe("54.15");
    expect(
      amperes(single, "25 mm²", {
        referenceMethod: "F",
        arrangement: "trefoil",
        trayKind: "perforated",
        grouped: 1,
        trays: 2,
      }),
    ).toBe("125.55");
    expect(amperes(multi, "10 mm²", { grouped: 3, unequalSizes: true })).toBe("28.5");
  });

  it("corrects for ground, soil and neighbours in the ground", () => {
    const buried = { referenceMethod: "D1", ambient: "20 °C", soilThermalResistivity: "1 K·m/W" } as const;
    expect(amperes(multi, "10 mm²", buried)).toBe("59");
    expect(amperes(multi, "10 mm²", { ...buried, grouped: 1, clearance: "0.25 m" })).toBe("53.1");
    expect(amperes(multi, "10 mm²", { ...buried, referenceMethod: "D2", grouped: 1, ambient: "15 °C" })).toBe(
      "63.7875",
    );
  });

  it("counts parallel conductors as circuits of their own, and adds what they carry", () => {
    expect(amperes({ ...multi, parallel: 2 }, "10 mm²", {})).toBe("91.2");
  });

  it("lowers what the lines carry where third harmonics load the neutral", () => {
    const at = (thirdHarmonicShare: string): string => amperes(multi, "10 mm²", { thirdHarmonicShare });
    expect([at("15 %"), at("15.1 %"), at("33 %")]).toEqual(["57", "49.02", "49.02"]);
    expect(at("50 %")).toBe("38");
  });

  it("says what it took where the stretch left something out", () => {
    const { notes } = ampacityOf({
      cable: multi,
      size: "10 mm²",
      stretch: { ...onWall, referenceMethod: "D1", ambient: "20 °C", grouped: 1 },
      loaded: 3,
      wiring,
    });
    expect(notes).toEqual([
      "the ducts are taken as touching, since their clearance is not stated",
      "the thermal resistivity of the soil is taken as 2.5 K·m/W, the base of the table, since none is stated",
    ]);
  });
});

describe("what the inputs cannot decide stays open", () => {
  const route = (stretches: readonly Stretch[]) =>
    routeAmpacity({ cable: multi, size: "4 mm²", stretches, loaded: 3, wiring });

  it("names each missing finding", () => {
    const { ampacity, governedBy } = route([
      onWall,
      { ...onWall, ambient: missing("a.ambient"), grouped: missing("a.grouped") },
    ]);
    expect(isMissing(ampacity) && ampacity.missing).toEqual(["a.ambient", "a.grouped"]);
    expect(governedBy).toBeNull();
  });

  it("lets the worst stretch govern", () => {
    const { ampacity, governedBy } = route([onWall, { ...onWall, ambient: "50 °C" }, { ...onWall, grouped: 1 }]);
    expect([(ampacity as Quantity).text, governedBy]).toEqual(["22.72", 1]);
  });

  it("takes a stated ampacity in place of the tables", () => {
    const { ampacity } = route([onWall, { ...onWall, statedAmpacity: "20 A" }]);
    expect((ampacity as Quantity).text).toBe("20");
  });
});

describe("refusals", () => {
  const refused = (cable: Cable, size: string, stretch: Partial<Stretch>, loaded: 2 | 3 = 3) =>
    problemsOf(() => ampacityOf({ cable, size, stretch: { ...onWall, ...stretch }, loaded, wiring })).map(
      ({ code, path }) => [code, path],
    );

  it.each([
    ["a gauge size", multi, "10 AWG", {}, ["unknown-unit"]],
    ["a section that nobody makes", multi, "5 mm²", {}, ["not-in-list"]],
    ["a multi-core cable in F", multi, "25 mm²", { referenceMethod: "F" as const }, ["refused"]],
    ["single cores in E", single, "25 mm²", { referenceMethod: "E" as const }, ["refused"]],
    ["single cores in F below 25 mm²", single, "16 mm²", { referenceMethod: "F" as const }, ["not-tabulated"]],
    ["a group of spaced single cores", single, "25 mm²", { referenceMethod: "G" as const, grouped: 1 }, ["refused"]],
    ["no reference method", multi, "4 mm²", { referenceMethod: undefined as never }, ["missing"]],
    ["no insulation", bare, "4 mm²", {}, ["refused"]],
    ["air too warm for the insulation", multi, "4 mm²", { ambient: "60.1 °C" }, ["not-tabulated"]],
    ["more than twenty circuits", multi, "4 mm²", { grouped: 20 }, ["not-tabulated"]],
    [
      "soil drier than the table",
      multi,
      "4 mm²",
      { referenceMethod: "D1" as const, soilThermalResistivity: "3.1 K·m/W" },
      ["not-tabulated"],
    ],
    [
      "a clearance of another method",
      multi,
      "4 mm²",
      { referenceMethod: "D1" as const, grouped: 1, clearance: "one diameter" as const },
      ["refused"],
    ],
  ])("%s", (_, cable, size, stretch, codes) => {
    expect(refused(cable, size, stretch).map(([code]) => code)).toEqual(codes);
  });

  it("two spaced conductors in G", () => {
    expect(refused(single, "25 mm²", { referenceMethod: "G" }, 2)).toEqual([
      ["refused", "stretches[].referenceMethod"],
    ]);
  });

  it("documents whose capacities are not held", () => {
    const call = (rules: "BS 7671:2018" | "AS/NZS 3000:2018") => () =>
      ampacityOf({ cable: multi, size: "4 mm²", stretch: onWall, loaded: 3, wiring: rules });
    expect(problemsOf(call("AS/NZS 3000:2018"))[0]!.expected).toBe("statedAmpacity");
    expect(problemsOf(call("BS 7671:2018"))[0]!.expected).toBe("statedAmpacity");
  });
});

describe("ampacity after BS 7671", () => {
  const british = { kind: "multi-core", conductor: "copper", insulation: "XLPE", armoured: true } as const;
  const at = (stretch: Partial<Stretch>, cable: Cable = british): string =>
    (
      ampacityOf({ cable, size: "25 mm²", stretch: { ...onWall, ...stretch }, loaded: 3, wiring: "BS 7671:2018" })
        .ampacity as Quantity
    ).text;

  it("takes the tables of armoured and single-core thermosetting cables", () => {
    expect(at({})).toBe("124");
    expect(at({ referenceMethod: "D1", ambient: "20 °C" })).toBe("96");
    expect(at({ referenceMethod: "B1", ambient: "40 °C" }, single)).toBe("106.47");
    expect(problemsOf(() => at({}, single))[0]!.code).toBe("refused");
  });
});
