import { describe, expect, it } from "vitest";
import { InputError } from "../../src/index.js";
import { materialList, materialsCsv } from "../../src/report/index.js";
import { bakery, sizedWith } from "./records.js";

describe("the material list", () => {
  // East: 24 m · 2 strings · 2 conductors; West: 26 m · 1 · 2; board: 22 m · 1 cable.
  it("adds cables of one type and an allowance", () => {
    const cables = materialList(bakery, "10 %").filter(({ group }) => group === "cables");
    expect(cables.map(({ size, quantity }) => [size, quantity.kind === "made" ? quantity.value : ""])).toEqual([
      ["4 mm²", "105.6"],
      ["2.5 mm²", "57.2"],
      ["10 mm²", "24.2"],
    ]);
  });

  it("joins routes that use one cable", () => {
    const same = sizedWith({ "routes[1].cable.size": "4 mm2" });
    const [pv] = materialList(same, "0 %").filter(({ group }) => group === "cables");
    expect(pv).toMatchObject({
      size: "4 mm²",
      where: "East face to Inverter; West face to Inverter",
      quantity: { value: "148" },
    });
  });

  it("counts devices by rating", () => {
    expect(
      materialList(bakery)
        .filter(({ group }) => group === "devices")
        .map(({ what, unit }) => [what, unit]),
    ).toContainEqual(["circuit-breaker", "piece"]);
  });

  it("states its allowance, and refuses one that is no share", () => {
    expect(materialsCsv(bakery, { cableAllowance: "5 %" })).toContain("with an allowance of 5 %");
    expect(() => materialList(bakery, "5 m")).toThrow(InputError);
  });
});
