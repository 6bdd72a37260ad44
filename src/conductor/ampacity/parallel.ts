import { type Known, whenKnown } from "../../formula/index.js";
import { given, type Quantity } from "../../quantity/index.js";
import type { Cable } from "../cable.js";
import { ampacityOfParallel } from "./compose.js";

/** Equal conductors of a cable in parallel for each line: one where nothing is stated. */
export function parallelOf({ parallel = 1 }: Cable): Quantity<"ratio"> {
  return given(parallel, "1");
}

/** The ampacity of a line of one conductor, or of several in parallel. */
export function ofAllParallel(one: Known<Quantity<"current">>, cable: Cable): Known<Quantity<"current">> {
  const conductorsInParallel = parallelOf(cable);
  if (conductorsInParallel.text === "1") return one;
  return whenKnown({ one }, (known) => ampacityOfParallel({ ampacity: known.one, conductorsInParallel }));
}
