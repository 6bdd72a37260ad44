import type { Named } from "../../formula/index.js";
import { makeRecorder } from "../../plant/record/recorder.js";
import type { Quantity } from "../../quantity/index.js";
import type { Working } from "./reevaluate.js";

/** The working of some values in the shape in which a sizing record carries it. */
export function workingOf(values: readonly (Quantity | Named)[]): Working {
  const recorder = makeRecorder();
  for (const value of values) recorder.number(value as Quantity);
  return { steps: recorder.steps(), declarations: recorder.declarations() };
}
