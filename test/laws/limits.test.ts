import { describe, expect, it } from "vitest";
import { conditions, formulas, models } from "../../src/catalogue/index.js";
import { byMathjs, scopeOf } from "./big-numbers.js";
import second from "./limits.json" with { type: "json" };
import { accepts, drawsAround } from "./requirements.js";
import { declaredLimits, type Limits, probesOf, takes, verdictsOf } from "./limits.js";

// Every limit is written down twice: in its rule and in limits.json. A slip in one of them is noticed by the other.
const limits = second as unknown as Limits;

describe("each bound lets in, at it and one last digit on either side, what limits.json says, in", () => {
  for (const rule of [...formulas(), ...models()]) {
    const own = limits.bounds[rule.id];
    if (!own) continue;
    it(rule.id, () => {
      for (const [symbol, bounds] of Object.entries(own)) {
        const take = rule.declaration.takes[symbol]!;
        const unit = "each" in take ? take.each : take.unit;
        for (const { number, taken } of probesOf(bounds)) {
          const text = `${symbol} ${number} ${unit}`;
          expect([text, takes(rule as never, symbol, unit, "each" in take, number)]).toEqual([text, taken]);
        }
      }
    });
  }
});

describe("each requirement holds where limits.json says so, on its limit and beside it, in", () => {
  for (const rule of formulas()) {
    const own = limits.requires[rule.id];
    if (!own) continue;
    it(rule.id, () => {
      const outcomes = drawsAround(rule.declaration, own).flatMap((draw) => {
        const found = accepts(rule, draw);
        const due = own.every((that) => byMathjs(that, scopeOf(rule.declaration, draw)) === true);
        return found === null ? [] : [{ draw, found, due }];
      });
      expect(outcomes.filter(({ found, due }) => found !== due)).toEqual([]);
      expect(new Set(outcomes.map(({ due }) => due)).size, "a requirement that no input can break is none").toBe(2);
    });
  }
});

describe("each condition is met, below its limit, at it and above, as limits.json says, in", () => {
  for (const condition of conditions()) {
    const own = limits.verdicts[condition.id];
    if (own) it(condition.id, () => expect(verdictsOf(condition)).toEqual(own));
  }
});

it("limits.json has the limits of every rule (after a look at what changed: npx tsx test/laws/write-limits.ts)", () => {
  expect(JSON.parse(JSON.stringify(declaredLimits()))).toEqual(second);
});
