import { describe, expect, it } from "vitest";
import { agreement } from "../../src/evidence/index.js";
import { digitsText, ratio, readDigits } from "../../src/evidence/digits.js";

const agrees = (computed: string, printed: string, rounding: "nearest" | "cut" | "up" | "exact"): boolean =>
  agreement(readDigits(computed)!, readDigits(printed)!, rounding).agrees;

describe("agreement by printed digits", () => {
  it.each([
    [
      "nearest",
      "54.5",
      [
        ["54.45", true],
        ["54.55", true],
        ["54.449999", false],
        ["54.550001", false],
      ],
    ],
    [
      "nearest",
      "-0.27",
      [
        ["-0.265", true],
        ["-0.2649", false],
        ["0.27", false],
      ],
    ],
    [
      "nearest",
      "15",
      [
        ["14.5", true],
        ["15.5", true],
        ["15.51", false],
      ],
    ],
    [
      "nearest",
      "1.5e3",
      [
        ["1450", true],
        ["1449", false],
      ],
    ],
    [
      "cut",
      "3.56",
      [
        ["3.56", true],
        ["3.5699999", true],
        ["3.57", false],
        ["3.5599", false],
      ],
    ],
    [
      "cut",
      "-3.5",
      [
        ["-3.59", true],
        ["-3.6", false],
        ["-3.49", false],
      ],
    ],
    [
      "up",
      "3.6",
      [
        ["3.6", true],
        ["3.500001", true],
        ["3.5", false],
        ["3.61", false],
      ],
    ],
    [
      "exact",
      "12",
      [
        ["12", true],
        ["12.0", true],
        ["12.0001", false],
      ],
    ],
  ] as const)("%s %s", (rounding, printed, rows) => {
    for (const [computed, due] of rows)
      expect([computed, agrees(computed, printed, rounding)]).toEqual([computed, due]);
  });

  it("says how much of the last digit is used", () => {
    const share = (computed: string) => agreement(readDigits(computed)!, readDigits("54.5")!, "nearest").share;
    expect([share("54.5"), share("54.5061"), share("54.55"), share("54.6")]).toEqual([
      "0.0000",
      "0.1220",
      "1.0000",
      "2.0000",
    ]);
  });
});

describe("digits", () => {
  it.each(["0", "-0.50", "12.345", "100", "0.001"])("reads and prints %s unchanged", (text) => {
    expect(digitsText(readDigits(text)!)).toBe(text);
  });

  it.each(["", "12,5", "1 000", "abc", ".", "1.2.3"])("refuses %j", (text) => expect(readDigits(text)).toBeUndefined());

  it("reads a typographic minus and an exponent", () => {
    expect(digitsText(readDigits("−4.36e-3")!)).toBe("-0.00436");
    expect(ratio(readDigits("1")!, readDigits("3")!, 4)).toBe("0.3333");
  });
});
