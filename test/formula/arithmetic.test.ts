import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { add, divide, multiply, power, subtract, type Trust } from "../../src/formula/arithmetic.js";
import { Exact } from "../../src/quantity/decimal.js";

// An independent judge: the same operation with a thousand digits, compared with what 34 digits gave.
const Judge = Decimal.clone({ defaults: true, precision: 1000 });

const digits = fc.tuple(
  fc.bigInt({ min: -(10n ** 34n) + 1n, max: 10n ** 34n - 1n }),
  fc.integer({ min: -40, max: 20 }),
  fc.integer({ min: 1, max: 34 }),
);
const decimal = digits.map(([whole, exponent, keep]) => new Exact(`${whole}e${exponent}`).toSignificantDigits(keep));

const operations = {
  add: [add, (a: Decimal, b: Decimal) => new Judge(a).plus(b)],
  subtract: [subtract, (a: Decimal, b: Decimal) => new Judge(a).minus(b)],
  multiply: [multiply, (a: Decimal, b: Decimal) => new Judge(a).times(b)],
} as const;

describe("every operation", () => {
  it.each(Object.entries(operations))("%s says that it is exact exactly where it is", (_, [operate, judge]) => {
    let exact = 0;
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        const trust: Trust = { keeps: Infinity };
        const result = operate(a, b, trust);
        const isExact = judge(a, b).eq(new Judge(result));
        if (isExact) exact += 1;
        expect(trust.keeps === Infinity).toBe(isExact);
      }),
      { numRuns: 2000 },
    );
    expect(exact).toBeGreaterThan(100);
  });

  it("never calls a quotient exact that is not", () => {
    fc.assert(
      fc.property(
        decimal,
        decimal.filter((b) => !b.isZero()),
        (a, b) => {
          const trust: Trust = { keeps: Infinity };
          const result = divide(a, b, trust);
          if (trust.keeps === Infinity) expect(new Judge(result).times(b).eq(new Judge(a))).toBe(true);
        },
      ),
      { numRuns: 2000 },
    );
    const trust: Trust = { keeps: Infinity };
    expect(divide(new Exact("1"), new Exact("8"), trust).toFixed()).toBe("0.125");
    expect(trust.keeps).toBe(Infinity);
  });

  // 1/(1 + 1e-33)² has far more than 34 digits, yet it rounds to a short number: only multiplying back shows it.
  it("notices a result that rounds to a short number", () => {
    const near = new Exact("1.000000000000000000000000000000001");
    const far = new Exact("0.999999999999999999999999999999999");
    const trust: Trust = { keeps: Infinity };
    expect(multiply(near, far, trust).toFixed()).toBe("1");
    expect(trust.keeps).toBe(28);
  });

  it("keeps whole powers exact while they fit", () => {
    const trust: Trust = { keeps: Infinity };
    expect(power(new Exact("1.1"), new Exact("3"), trust).toFixed()).toBe("1.331");
    expect(trust.keeps).toBe(Infinity);
    power(new Exact("1.1"), new Exact("0.5"), trust);
    expect(trust.keeps).toBe(28);
  });

  it("trusts a difference of near equals to that many fewer digits", () => {
    const trust: Trust = { keeps: 28 };
    subtract(new Exact("1000.0001"), new Exact("1000"), trust);
    expect(trust.keeps).toBe(21);
  });
});
