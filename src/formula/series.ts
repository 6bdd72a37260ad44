import { Exact } from "../quantity/decimal.js";
import { makeQuantity, type Origin, type Quantity } from "../quantity/quantity.js";
import type { DimensionOf, Unit } from "../quantity/units.js";
import type { SeriesDeclaration } from "./declaration.js";

/** A size of a standard series, before it is chosen. */
export interface SizeOrigin extends Origin {
  readonly kind: "choice";
  readonly rule: SeriesDeclaration;
}

/** A standard series of sizes, smallest first. */
export interface Series<U extends Unit = Unit> {
  readonly kind: "series";
  readonly id: string;
  readonly declaration: SeriesDeclaration;
  /** Every size, smallest first. */
  sizes(): readonly Quantity<DimensionOf<U>>[];
}

/** Declares a standard series of sizes. */
export function series<const D extends SeriesDeclaration>(declaration: D): Series<D["unit"]> {
  let made: readonly Quantity[] | undefined;
  const read = (): readonly Quantity[] => {
    const origin: SizeOrigin = { kind: "choice", rule: declaration };
    return Object.freeze(
      declaration.sizes
        .trim()
        .split(/\s+/)
        .map((text) => makeQuantity({ value: new Exact(text), keeps: Infinity }, declaration.unit as never, origin)),
    );
  };
  return Object.freeze({
    kind: "series",
    id: declaration.id,
    declaration,
    sizes: () => (made ??= read()) as readonly Quantity<DimensionOf<D["unit"]>>[],
  });
}
