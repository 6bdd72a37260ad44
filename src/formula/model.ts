import { Exact } from "../quantity/decimal.js";
import { InputError } from "../quantity/input-error.js";
import { makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { ModelDeclaration } from "./declaration.js";
import { type Arguments, type Inputs, readInputs, slotsOf, type Taken } from "./inputs.js";

/** Came from a method in double precision. */
export interface ModelOrigin extends Origin {
  readonly kind: "model";
  readonly rule: ModelDeclaration;
  readonly inputs: Inputs;
}

/** A declared double-precision method. */
export interface Model<T, U extends Unit> {
  (inputs: Arguments<T>): Quantity<DimensionOf<U>>;
  readonly kind: "model";
  readonly id: string;
  readonly declaration: ModelDeclaration;
}

/**
 * Declares a double-precision method; its result crosses into decimal with the digits that it can be trusted to.
 *
 * @throws InputError at a call whose inputs are outside their domains or whose result is not finite
 */
export function model<const D extends ModelDeclaration>(
  declaration: D,
  evaluate: (doubles: { readonly [K in keyof D["takes"]]: number }) => number,
): Model<{ [K in keyof D["takes"]]: Taken<D["takes"][K]> }, D["gives"]["unit"]> {
  const { id, gives, takes, digits } = declaration;
  const slots = slotsOf(takes);
  const rule = (raw: Readonly<Record<string, unknown>>): Quantity => {
    const inputs = readInputs(id, raw, slots);
    const doubles = Object.fromEntries(Object.entries(inputs).map(([key, value]) => [key, (value as Quantity).number]));
    const result = evaluate(doubles as { readonly [K in keyof D["takes"]]: number });
    if (!Number.isFinite(result)) {
      const message = "the method gives no finite result for these inputs";
      throw new InputError(id, [
        {
          path: gives.symbol,
          code: "not-finite",
          message,
          expected: "a finite result",
          received: JSON.stringify(doubles),
        },
      ]);
    }
    const origin: ModelOrigin = { kind: "model", rule: declaration, inputs };
    return makeQuantity({ value: new Exact(result), keeps: digits }, gives.unit as never, origin);
  };
  return Object.assign(rule, { kind: "model", id, declaration }) as never;
}
