import {
  type ConversionOrigin,
  convertQuantity,
  type GivenOrigin,
  keptOf,
  makeQuantity,
  type Quantity,
} from "./quantity.js";
import type { Dimension } from "./units.js";

/** The same input with the place that it is from; what is not an input stays as it is. */
export function restate<D extends Dimension>(quantity: Quantity<D>, statedIn: string): Quantity<D> {
  if (quantity.origin.kind === "conversion") {
    const { from } = quantity.origin as ConversionOrigin;
    return convertQuantity(restate(from as unknown as Quantity<D>, statedIn), quantity.unit);
  }
  if (quantity.origin.kind !== "given") return quantity;
  const origin: GivenOrigin = Object.freeze({ kind: "given", statedIn });
  return makeQuantity<D>(keptOf(quantity), quantity.unit, origin);
}
