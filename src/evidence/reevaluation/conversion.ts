import type { RecordedStep } from "../../plant/record/record.js";
import { type Unit, units } from "../../quantity/index.js";
import type { Due, Evaluator } from "./evaluator.js";

// 0 °C is where the Fahrenheit scale has 32.
const zeroOf = (unit: Unit): string => (unit === "°F" ? "32" : "0");

/** The ratio of a unit to the first of its kind, as an expression. */
function ratioOf(unit: Unit): string {
  const [, ratio, ...marks] = units[unit] as readonly string[];
  const turns = marks.includes("pi") ? " * pi" : marks.includes("pi-below") ? " / pi" : "";
  return `(${ratio}${turns})`;
}

/** A value in another unit of its kind, from the table of units. */
export function conversionDue(from: RecordedStep, unit: Unit, evaluate: Evaluator): Due {
  const came = from.unit as Unit;
  if (units[came][0] !== units[unit][0]) return { fault: `${came} does not convert to ${unit}` };
  const text = `(x - ${zeroOf(came)}) * ${ratioOf(came)} / ${ratioOf(unit)} + ${zeroOf(unit)}`;
  const value = evaluate(text, { x: from.value });
  return typeof value === "string" ? { value } : { fault: "the conversion gives no number" };
}
