import { describe, expect, it } from "vitest";
import {
  bondingJumper,
  directCurrentElectrodeConductor,
  equipmentGroundingConductor,
  type EquipmentGroundingQuestion,
  groundingElectrodeConductor,
} from "../../src/earthing/index.js";
import { missing } from "../../src/formula/index.js";

const base: EquipmentGroundingQuestion = {
  at: "INV1",
  size: "choose",
  ratedCurrent: "40 A",
  material: "copper",
  circuitArea: "16510 cmil",
  enlarged: null,
};

describe("equipment grounding conductor", () => {
  it.each([
    ["15", "14 AWG"],
    ["20", "12 AWG"],
    ["20.1", "10 AWG"],
    ["60", "10 AWG"],
    ["60.1", "8 AWG"],
    ["100", "8 AWG"],
  ])("for a device of %s A is %s", (rated, due) => {
    expect(equipmentGroundingConductor({ ...base, ratedCurrent: `${rated} A`, circuitArea: "83690 cmil" }).name).toBe(
      due,
    );
  });

  it("need not exceed the conductors of the circuit", () => {
    expect(equipmentGroundingConductor({ ...base, ratedCurrent: "200 A" }).name).toBe("8 AWG");
    expect(
      equipmentGroundingConductor({ ...base, ratedCurrent: "200 A", circuitArea: missing("routes[0].cable.size") })
        .name,
    ).toBe("6 AWG");
  });

  it("grows in proportion with enlarged conductors, by the areas of the table", () => {
    const enlarged = { installed: "41740 cmil", least: "16510 cmil" };
    expect(equipmentGroundingConductor({ ...base, circuitArea: "41740 cmil", enlarged }).name).toBe("4 AWG");
    const whole = { installed: "26240 cmil", least: "26240 cmil" };
    expect(equipmentGroundingConductor({ ...base, circuitArea: "26240 cmil", enlarged: whole }).name).toBe("10 AWG");
  });

  it("of a stated size is judged exactly", () => {
    const stated = (size: string) => equipmentGroundingConductor({ ...base, size }).checks[0]?.verdict;
    expect([stated("10380 cmil"), stated("10379 cmil")]).toEqual(["met", "not met"]);
  });

  it("is open without its device", () => {
    const { size, checks } = equipmentGroundingConductor({
      ...base,
      ratedCurrent: missing("routes[0].breaker.rating"),
    });
    expect([size, checks[0]?.missing]).toEqual([null, ["routes[0].breaker.rating"]]);
  });
});

describe("grounding electrode conductor", () => {
  const service = {
    serviceArea: "500 kcmil",
    sets: 2,
    serviceMaterial: "copper",
    material: "copper",
    sole: null,
  } as const;
  it("takes parallel conductors together, and the last row above the table", () => {
    expect(groundingElectrodeConductor(service).name).toBe("2/0 AWG");
    expect(groundingElectrodeConductor({ ...service, sets: 3 }).name).toBe("3/0 AWG");
    expect(groundingElectrodeConductor({ ...service, sets: 3, material: "aluminium" }).name).toBe("250 kcmil");
    expect(groundingElectrodeConductor({ ...service, serviceArea: "1100 kcmil", sets: 1 }).name).toBe("2/0 AWG");
    expect(groundingElectrodeConductor({ ...service, serviceArea: "1100001 cmil", sets: 1 }).name).toBe("3/0 AWG");
  });
  it("is never larger than its only electrode asks for, and keeps what is smaller", () => {
    expect(groundingElectrodeConductor({ ...service, sole: "concrete-encased" }).name).toBe("4 AWG");
    expect(groundingElectrodeConductor({ ...service, sole: "rod, pipe or plate", material: "aluminium" }).name).toBe(
      "4 AWG",
    );
    expect(
      groundingElectrodeConductor({ ...service, serviceArea: "66360 cmil", sets: 1, sole: "concrete-encased" }).name,
    ).toBe("8 AWG");
    expect(groundingElectrodeConductor({ ...service, sole: "concrete-encased", material: "aluminium" }).name).toBe(
      "4/0 AWG",
    );
  });
});

describe("bonding jumper", () => {
  it("follows the table, then an eighth of the area", () => {
    const jumper = bondingJumper({
      serviceArea: "250 kcmil",
      sets: 2,
      serviceMaterial: "aluminium",
      material: "copper",
    });
    expect("name" in jumper && jumper.name).toBe("2 AWG");
    const large = bondingJumper({
      serviceArea: "1000 kcmil",
      sets: 2,
      serviceMaterial: "aluminium",
      material: "copper",
    });
    expect("unit" in large && large.in("kcmil").text).toBe("250");
  });
});

describe("grounding electrode conductor of a direct current system", () => {
  it.each([
    ["10380", "16510"],
    ["16510", "16510"],
    ["16511", "16511"],
    ["167800", "167800"],
    ["211600", "167800"],
  ])("of %s cmil is %s cmil", (area, due) => {
    expect(directCurrentElectrodeConductor(`${area} cmil`, "copper").text).toBe(due);
  });
});
