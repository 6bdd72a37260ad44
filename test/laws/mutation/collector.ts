import { JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";
import * as chai from "chai";
import * as fastCheck from "fast-check";

/** One collected test. */
export interface Collected {
  readonly name: string;
  readonly run: () => unknown;
}

/** The tests that the bundled files declare, in order. */
export const collected: Collected[] = [];

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);

/** What the tests call: the assertions of the test runner without the runner. */
export const expect = chai.expect;

const path: string[] = [];
const PROPERTY_RUNS = 25;
const SEED = 1;
const LONGEST_TITLE = 80;

type Body = (...values: never[]) => unknown;

function titled(name: string, values: unknown): string {
  return name.includes("$") || name.includes("%")
    ? `${name} ${JSON.stringify([values]).slice(0, LONGEST_TITLE)}`
    : name;
}

function each(declare: (name: string, body: () => unknown) => void) {
  return (rows: readonly unknown[]) =>
    (name: string, body: Body): void => {
      for (const row of rows) {
        const values = Array.isArray(row) ? row : [row];
        declare(titled(name, row), () => body(...(values as never[])));
      }
    };
}

function declareSuite(name: string, body: () => unknown): void {
  path.push(name);
  body();
  path.pop();
}

function declareTest(name: string, body: () => unknown): void {
  const full = [...path, name].join(" › ");
  collected.push({ name: full, run: body });
}

const nothing = (): void => undefined;

export const describe = Object.assign(declareSuite, {
  each: each(declareSuite),
  skip: nothing,
  skipIf: () => declareSuite,
});

const prop =
  (arbitraries: readonly fastCheck.Arbitrary<unknown>[] | Readonly<Record<string, fastCheck.Arbitrary<unknown>>>) =>
  (name: string, body: Body): void => {
    const values = Array.isArray(arbitraries)
      ? fastCheck.tuple(...(arbitraries as fastCheck.Arbitrary<unknown>[]))
      : fastCheck.record(arbitraries as never).map((record) => [record]);
    const property = fastCheck.property(values, (drawn) => {
      const held = body(...(drawn as never[]));
      return held !== false;
    });
    declareTest(name, () => fastCheck.assert(property, { numRuns: PROPERTY_RUNS, seed: SEED }));
  };

export const it = Object.assign(declareTest, {
  each: each(declareTest),
  skip: nothing,
  skipIf: () => declareTest,
  prop,
});
export const test = it;
export const [beforeAll, beforeEach, afterAll, afterEach] = [nothing, nothing, nothing, nothing];
export const expectTypeOf = (): unknown => new Proxy(nothing, { get: () => expectTypeOf(), apply: () => undefined });
export const fc = fastCheck;
