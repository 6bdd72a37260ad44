import { describe, expect, it } from "vitest";
import {
  chooseActiveEarth,
  chooseArrayBonding,
  chooseEarthingConductor,
  chooseMainBonding,
  chooseProtectiveConductor,
  mainBondingSection,
  protectiveConductorSection,
  protectiveFactor,
  provePen,
  type ProtectiveConductorQuestion,
} from "../../src/earthing/index.js";
import { missing } from "../../src/formula/index.js";

const loop = missing("supply.loop");
const question: ProtectiveConductorQuestion = {
  at: "INV1",
  section: "choose",
  placing: "in cable",
  material: "copper",
  method: "by table",
  lineSection: "10 mm²",
  factors: null,
  fault: loop,
};
const verdicts = (checks: readonly { readonly verdict: string }[]): string =>
  checks.map(({ verdict }) => verdict).join(", ");

describe("protective conductor by the table", () => {
  it.each([
    ["1.5", "1.5"],
    ["16", "16"],
    ["16.01", "16"],
    ["35", "16"],
    ["35.01", "17.505"],
    ["70", "35"],
    ["240", "120"],
  ])("of a line conductor of %s mm² is %s mm²", (line, due) =>
    expect(protectiveConductorSection({ lineSection: `${line} mm²` }).text).toBe(due),
  );

  it.each([
    ["10", "10"],
    ["25", "16"],
    ["50", "25"],
    ["120", "70"],
    ["185", "95"],
  ])("chosen for %s mm² is %s mm²", (line, due) => {
    expect(chooseProtectiveConductor({ ...question, lineSection: `${line} mm²` }).section?.text).toBe(due);
  });

  it("of steel is larger by the factors of both", () => {
    const factors = { line: "115", protective: "52" };
    const { required, section } = chooseProtectiveConductor({ ...question, lineSection: "25 mm²", factors });
    expect("text" in required && required.show()).toBe("35.38 mm²");
    expect(section?.text).toBe("50");
  });

  it("outside a cable is never below its least section, and judged exactly at it", () => {
    const separate = { ...question, lineSection: "1.5 mm²", placing: "separate, unprotected" } as const;
    expect(chooseProtectiveConductor(separate).section?.text).toBe("4");
    expect(chooseProtectiveConductor({ ...separate, placing: "separate, protected" }).section?.text).toBe("2.5");
    expect(chooseProtectiveConductor({ ...separate, material: "aluminium" }).section?.text).toBe("16");
    expect(verdicts(chooseProtectiveConductor({ ...separate, section: "4 mm²" }).checks)).toBe("met, met");
    expect(verdicts(chooseProtectiveConductor({ ...separate, section: "3.9 mm²" }).checks)).toBe("met, not met");
  });

  it("stays open, and is not chosen, without the line conductor", () => {
    const { section, checks } = chooseProtectiveConductor({
      ...question,
      lineSection: missing("routes[0].cable.size"),
    });
    expect(section).toBeNull();
    expect(checks[0]).toMatchObject({ verdict: "open", missing: ["routes[0].cable.size"] });
  });
});

describe("protective conductor by calculation", () => {
  const fault = { current: "800 A", time: "0.1 s", factor: "115" };

  it("is the smallest that withstands the fault", () => {
    const { section, required } = chooseProtectiveConductor({ ...question, method: "by calculation", fault });
    expect("text" in required && required.show()).toBe("2.2 mm²");
    expect(section?.text).toBe("2.5");
  });

  it("stays open without the fault", () => {
    expect(chooseProtectiveConductor({ ...question, method: "by calculation" }).checks[0]?.missing).toEqual([
      "supply.loop",
    ]);
  });
});

describe("earthing conductor by AS/NZS", () => {
  it.each([
    ["16", "copper", "6"],
    ["150", "copper", "50"],
    ["16", "aluminium", "4"],
  ] as const)("of %s mm² of %s is %s mm²", (line, metal, due) => {
    expect(
      chooseActiveEarth({ at: "INV1", section: "choose", lineSection: `${line} mm²`, lineMaterial: metal }).section
        ?.text,
    ).toBe(due);
  });

  it("is judged exactly at the table", () => {
    const earth = (section: string) =>
      chooseActiveEarth({ at: "INV1", section, lineSection: "16 mm²", lineMaterial: "copper" }).checks[0]?.verdict;
    expect([earth("6 mm²"), earth("5.9 mm²")]).toEqual(["met", "not met"]);
  });
});

describe("earthing conductor", () => {
  const base = {
    at: "origin",
    section: "choose",
    material: "copper",
    supplySection: "4 mm²",
    burial: "not buried",
    lightningProtection: "none",
  } as const;
  const sized = (other: object): string | undefined => chooseEarthingConductor({ ...base, ...other }).section?.text;

  it("follows supply, burial and lightning protection, the safe case where that is not known", () => {
    expect(sized({})).toBe("6");
    expect(sized({ supplySection: "70 mm²" })).toBe("35");
    expect(sized({ lightningProtection: "present" })).toBe("16");
    expect(sized({ lightningProtection: missing("lightningProtection") })).toBe("16");
    expect(sized({ burial: "neither" })).toBe("25");
    expect(sized({ burial: "corrosion only" })).toBe("16");
    expect(sized({ material: "steel" })).toBe("50");
  });

  it("of a stated size is open between both cases", () => {
    const lightningProtection = missing("lightningProtection");
    const stated = (section: string): string =>
      verdicts(chooseEarthingConductor({ ...base, section, lightningProtection }).checks);
    expect([stated("16 mm²"), stated("10 mm²"), stated("4 mm²")]).toEqual(["met, met", "met, open", "met, not met"]);
  });

  it("names what is missing", () => {
    const { checks } = chooseEarthingConductor({
      ...base,
      supplySection: missing("supply.section"),
      burial: missing("earthing.burial"),
    });
    expect(checks.flatMap((check) => check.missing)).toEqual(["supply.section", "earthing.burial"]);
  });
});

describe("main bonding", () => {
  it.each([
    ["10", "6"],
    ["12", "6"],
    ["12.02", "6.01"],
    ["35", "17.5"],
    ["50", "25"],
    ["50.02", "25"],
    ["95", "25"],
  ])("of an earthing conductor of %s mm² is %s mm²", (earth, due) => {
    expect(mainBondingSection({ earthingSection: `${earth} mm²` }).text).toBe(due);
  });

  const base = {
    at: "origin",
    section: "choose",
    wiring: "BS 7671:2018",
    earthing: "TN-C-S",
    earthingSection: "16 mm²",
    neutralSection: "50 mm²",
  } as const;
  const sized = (other: object): string | undefined => chooseMainBonding({ ...base, ...other }).section?.text;

  it("follows the neutral where it is also the protective conductor, by British practice", () => {
    expect(sized({})).toBe("16");
    expect(sized({ neutralSection: "150 mm²" })).toBe("35");
    expect(sized({ neutralSection: "185 mm²" })).toBe("50");
    expect(sized({ earthing: "TN-C" })).toBe("16");
    expect(sized({ earthing: "TT" })).toBe("10");
    expect(sized({ wiring: "IEC 60364:2009-2017" })).toBe("10");
  });

  it("is not chosen without what decides it", () => {
    for (const other of [
      { earthing: missing("supply.earthing") },
      { neutralSection: missing("supply.neutral") },
      { earthing: "TT", earthingSection: missing("earthing.conductor") },
    ]) {
      const { section, checks } = chooseMainBonding({ ...base, ...other } as never);
      expect([section, checks[0]?.verdict]).toEqual([null, "open"]);
    }
  });
});

describe("bonding of an array", () => {
  const lightning = missing("lightningProtection");
  it("is 16 mm² until it is known that no lightning current can flow", () => {
    expect(chooseArrayBonding({ at: "South", section: "choose", lightning }).section?.text).toBe("16");
    expect(
      chooseArrayBonding({ at: "South", section: "choose", lightning: "no lightning protection" }).section?.text,
    ).toBe("6");
    expect(
      chooseArrayBonding({ at: "South", section: "choose", lightning: "lightning current can flow" }).section?.text,
    ).toBe("16");
  });
  it("of a stated size is open between both cases", () => {
    const stated = (section: string) => chooseArrayBonding({ at: "South", section, lightning }).checks[0]?.verdict;
    expect([stated("16 mm²"), stated("6 mm²"), stated("4 mm²")]).toEqual(["met", "open", "not met"]);
  });
});

describe("adiabatic factor by situation", () => {
  it.each([
    ["separate", "thermosetting 90 °C", "copper", "176"],
    ["bare beside cables", "covering PVC", "steel", "58"],
    ["core in cable", "PVC 70 °C, up to 300 mm²", "aluminium", "76"],
    ["metallic layer", "PVC 90 °C", "lead", "23"],
    ["bare", "fire risk", "copper", "138"],
  ] as const)("%s, %s, %s: %s", (situation, insulation, material, due) => {
    expect(protectiveFactor({ situation, insulation, material }).text).toBe(due);
  });
});

describe("combined protective and neutral conductor", () => {
  const at = (section: string, material: "copper" | "aluminium", residualDevice: "present" | "none"): string =>
    verdicts(provePen({ at: "Main board", section, material, residualDevice }));
  it("is at least 10 mm² of copper or 16 mm² of aluminium, without a residual current device", () => {
    expect([at("10 mm²", "copper", "none"), at("9.9 mm²", "copper", "none")]).toEqual(["met, met", "not met, met"]);
    expect([at("16 mm²", "aluminium", "none"), at("15.9 mm²", "aluminium", "present")]).toEqual([
      "met, met",
      "not met, not met",
    ]);
    const open = provePen({
      at: "x",
      section: missing("routes[1].cable.size"),
      material: "copper",
      residualDevice: missing("routes[1].rcd"),
    });
    expect(open.flatMap((check) => check.missing)).toEqual(["routes[1].cable.size", "routes[1].rcd"]);
  });
});
