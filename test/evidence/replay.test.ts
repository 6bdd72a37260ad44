import { describe, expect, it } from "vitest";
import type { Check, FormulaDeclaration } from "../../src/formula/index.js";
import { replay, type Swap } from "../../src/evidence/index.js";
import { given, type Quantity } from "../../src/quantity/index.js";
import { ownRules } from "./own-rules.js";

const calculation = ownRules.calculations.get("own/cable-current")!;
const { allowed, check } = calculation.call({ route: { section: "4 mm²", material: "copper" }, factor: "0.6" }) as {
  allowed: Quantity;
  check: Check;
};
const changed = (id: string, alter: (declaration: FormulaDeclaration) => object): { readonly swap: Swap } => ({
  swap: (declaration) => (declaration.id === id ? { ...declaration, ...alter(declaration as never) } : declaration),
});

describe("replay", () => {
  it("gives the same value where nothing is changed", () => {
    expect(replay(allowed, {})).toBe(allowed);
    expect(replay(check, {})).toBe(check);
  });
  it("works a value out again through changed tables and formulas, and through changes of unit", () => {
    const cells = "1.5  20  –\n2.5  27  21\n4  40  28";
    expect(
      replay(
        allowed,
        changed("own/ampacities", () => ({ cells })),
      ).text,
    ).toBe("24");
    expect(
      replay(
        allowed,
        changed("own/derated", () => ({ expression: "ampacity + factor * ampacity" })),
      ).text,
    ).toBe("57.6");
    expect(
      replay(
        allowed.in("mA"),
        changed("own/ampacities", () => ({ cells })),
      ).text,
    ).toBe("24000");
  });
  it("weighs a check again", () => {
    expect([
      check.verdict,
      replay(
        check,
        changed("own/ampacities", () => ({ cells: "4  30  28" })),
      ).verdict,
    ]).toEqual(["met", "not met"]);
    expect(
      replay(
        check,
        changed("own/within", () => ({ relation: ">" })),
      ).verdict,
    ).toBe("not met");
  });
  it("works a value out again with something else put into one symbol of one formula", () => {
    const half = (id: string, symbol: string) => ({
      shift: (rule: { readonly id: string }, key: string, input: Quantity) =>
        rule.id === id && key === symbol ? given("0.3", "1") : input,
    });
    expect(replay(allowed, half("own/derated", "factor")).text).toBe("10.8");
    expect(replay(allowed, half("own/derated", "other"))).toBe(allowed);
  });
});
