import { describe, expect, it } from "vitest";
import { equationText, namesIn, readExpression } from "../../src/formula/index.js";
import { compile } from "../../src/formula/evaluation.js";
import { Exact } from "../../src/quantity/decimal.js";

function value(text: string, values: Readonly<Record<string, string>> = {}): string {
  const names = Object.keys(values);
  const kept = names.map(() => Infinity);
  return compile(
    readExpression(text),
    names,
  )({ values: names.map((name) => new Exact(values[name]!)), kept, keeps: Infinity }).toFixed();
}

describe("precedence", () => {
  it.each([
    ["1 + 2 * 3", "7"],
    ["(1 + 2) * 3", "9"],
    ["2 ^ 3 ^ 2", "512"],
    ["-2 ^ 2", "-4"],
    ["(-2) ^ 2", "4"],
    ["8 / 2 / 2", "2"],
    ["8 / (2 / 2)", "8"],
    ["7 - 3 - 2", "2"],
    ["2 * -3", "-6"],
    ["1 < 2 ? 3 : 4", "3"],
    ["1 > 2 ? 3 : 2 > 1 ? 5 : 6", "5"],
    ["1 < 2 and 2 < 1 ? 1 : 0", "0"],
    ["1 < 2 or 2 < 1 ? 1 : 0", "1"],
    ["2 == 2 and 2 != 3 ? 1 : 0", "1"],
    ["2 >= 2 ? 1 : 0", "1"],
    ["2 <= 1 ? 1 : 0", "0"],
    ["max(1, 2 + 3, 4)", "5"],
    ["min(3, 2)", "2"],
    ["floor(2.7) + ceil(2.1) + abs(-1)", "6"],
    ["sqrt(9)", "3"],
  ])("%s is %s", (text, expected) => {
    expect(value(text)).toBe(expected);
  });

  it("reads names with figures in them and keeps the digits of numbers", () => {
    expect(value("k1 * line", { k1: "0.1000000000000000000000000000000001", line: "10" })).toBe(
      "1.000000000000000000000000000000001",
    );
    expect(namesIn(readExpression("a * (b + a) ? c : d".replace("a * (b + a)", "a < b")))).toEqual([
      "a",
      "b",
      "c",
      "d",
    ]);
  });
});

describe("what the grammar does not know", () => {
  it.each([
    "",
    "1 +",
    "(1",
    "1)",
    "1 2",
    "a = 1",
    "f(1)",
    "constructor(1)",
    "a.b",
    "a[0]",
    "'x'",
    "1 < 2 < 3",
    "1 ? : 2",
    "and",
    "1e3",
    "a; b",
    "#",
  ])("%j is a syntax error", (text) => {
    expect(() => readExpression(text)).toThrow(SyntaxError);
  });

  it.each(["1 < 2", "a", "1 < 2 and 1 < 3", "1 + (1 < 2)", "1 ? 2 : 3", "sum(1)"])(
    "%j does not compile without symbols",
    (text) => {
      expect(() => value(text)).toThrow(SyntaxError);
    },
  );
});

describe("printing", () => {
  it.each([
    ["a * (b + c)", "a · (b + c)"],
    ["a - (b - c)", "a − (b − c)"],
    ["a / (b * c)", "a / (b · c)"],
    ["(a + b) ^ 2", "(a + b)^2"],
    ["sqrt(3) * a", "√(3) · a"],
    ["-a * b", "−a · b"],
    ["a <= b ? a : b", "a if a ≤ b, otherwise b"],
    ["max(a, b)", "max(a, b)"],
    ["2 * pi * a", "2 · π · a"],
    ["a < b and b != c ? a : b", "a if a < b and b ≠ c, otherwise b"],
    ["a ^ -b", "a^(−b)"],
  ])("%s is printed as %s", (text, expected) => {
    expect(equationText(readExpression(text), (name) => name)).toBe(expected);
  });
});
