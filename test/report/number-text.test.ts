import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import {
  difference,
  grouped,
  roundedText,
  shiftedText,
  shown,
  shownPair,
  shownText,
  significantText,
  THIN_SPACE,
  utilisationText,
} from "../../src/report/view/number-text.js";

const number = (value: string, unit: string) => ({ value, unit, step: "s1", grade: null });

describe("rounding of decimal text", () => {
  it.each([
    ["604.44832", 1, "604.4"],
    ["604.45", 1, "604.5"],
    ["604.449999999999999999999999999999", 1, "604.4"],
    ["-0.05", 1, "-0.1"],
    ["-0.04", 1, "0.0"],
    ["9999.6", 0, "10000"],
    ["12345", -2, "12300"],
    ["12345.6", -2, "12300"],
    ["7", 3, "7"],
  ])("%s to %i places is %s", (text, places, due) => {
    expect(roundedText(text, places)).toBe(due);
  });

  it.each([
    ["0.00001395348837", 4, "0.00001395"],
    ["1.8284548", 4, "1.828"],
    ["0.99996", 4, "1.0000"],
    ["20014.05", 4, "20010"],
  ])("%s to %i significant digits is %s", (text, digits, due) => {
    expect(significantText(text, digits)).toBe(due);
  });

  const decimal = fc.tuple(fc.boolean(), fc.bigInt({ min: 0n, max: 10n ** 20n }), fc.integer({ min: 0, max: 12 }));
  const textOf = ([minus, digits, places]: [boolean, bigint, number]): string => {
    const padded = digits.toString().padStart(places + 1, "0");
    const value = places === 0 ? padded : `${padded.slice(0, -places)}.${padded.slice(-places)}`;
    return minus && digits !== 0n ? `-${value}` : value;
  };

  test.prop([decimal, fc.integer({ min: 0, max: 8 })])(
    "moves a value by half a unit of the last place at most",
    (parts, places) => {
      const text = textOf(parts);
      const gap = difference(text, roundedText(text, places)).replace("-", "");
      expect(Number(shiftedText(gap, places))).toBeLessThanOrEqual(0.5);
    },
  );

  test.prop([decimal, decimal])("subtracts exactly: a − b is the negative of b − a", (a, b) => {
    const [there, back] = [difference(textOf(a), textOf(b)), difference(textOf(b), textOf(a))];
    expect(there.replace("-", "")).toBe(back.replace("-", ""));
  });
});

describe("a number for people", () => {
  it.each([
    [number("604.44832", "V"), `604.4${THIN_SPACE}V`],
    [number("3.824619516", "V"), `3.82${THIN_SPACE}V`],
    [number("1000", "V"), `1000${THIN_SPACE}V`],
    [number("17200", "W"), `17${THIN_SPACE}200${THIN_SPACE}W`],
    [number("-0.0025", "1/K"), `−0.25${THIN_SPACE}%/K`],
    [number("0.00198796285", "Ω/m"), `1.988${THIN_SPACE}mΩ/m`],
    [number("8", "1"), "8"],
  ])("%o", (value, due) => {
    expect(shownText(shown(value))).toBe(due);
  });

  it("keeps every digit for who asks", () => {
    expect(shown(number("604.44832", "V")).exact).toBe(`604.44832${THIN_SPACE}V`);
  });

  it("shows every digit where rounding would make value and limit look alike", () => {
    const [value, limit] = shownPair(number("1000.04", "V"), number("1000", "V"));
    expect([value.digits, limit.digits]).toEqual(["1000.04", "1000"]);
  });

  it("groups five digits and more", () => {
    expect([grouped("1234"), grouped("12345"), grouped("-1234567.5")]).toEqual([
      "1234",
      `12${THIN_SPACE}345`,
      `−1${THIN_SPACE}234${THIN_SPACE}567.5`,
    ]);
  });

  it.each([
    ["0.9999", "0.9999"],
    ["1.0001", "1.0001"],
    ["1", "1.00"],
    ["0.3", "0.30"],
    ["0.8549", "0.85"],
  ])("utilisation %s reads %s: never on the other side of the limit", (text, due) => {
    expect(utilisationText(text)).toBe(due);
  });
});
