import { assumed } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";
import { absorbing, reactiveFactorOf } from "./ac-formulas.js";
import type { Sizing } from "./sizing.js";

/** The power factor at which the plant feeds in, and the reactive factor that goes with it. */
export interface FeedFactor {
  readonly powerFactor: Quantity<"ratio">;
  /** Injecting where positive. */
  readonly reactiveFactor: Quantity<"ratio">;
}

/** The power factor that the operator asks for; one, as an assumption that the reader sees, where none is stated. */
export function feedFactorOf({ plant, assumptions }: Sizing): FeedFactor {
  const { displacementFactor, reactiveDirection } = plant.supply;
  const powerFactor =
    displacementFactor ??
    assumed("1", "1", "displacement power factor of the infeed, where the operator asks for none", [
      {
        in: "common practice",
        clause: "unity power factor unless the operator asks for another",
        grade: "common-practice",
      },
    ]);
  if (!displacementFactor) assumptions.push(powerFactor);
  if (powerFactor.text === "1") return { powerFactor, reactiveFactor: reactiveFactorOf({ powerFactor }) };
  const reactiveFactor = reactiveFactorOf({ powerFactor });
  return {
    powerFactor,
    reactiveFactor: reactiveDirection === "injecting" ? reactiveFactor : absorbing({ reactiveFactor }),
  };
}
