import { type Check, condition } from "../../formula/index.js";
import type { Quantity } from "../../quantity/index.js";

/**
 * Are the conductors in parallel large enough to be in parallel?
 *
 * @function
 */
export const parallelLargeEnough = /* @__PURE__ */ condition({
  id: "conductor/parallel-large-enough", asks: "Are the conductors in parallel large enough to be in parallel?", force: "requirement",
  value: { unit: "cmil", symbol: "A", about: "area of one conductor" }, relation: "≥",
  limit: { unit: "cmil", symbol: "A_min", about: "smallest area that may be in parallel, 1/0 AWG" },
  source: [{ in: "NFPA 70:2023", clause: "310.10(G)(1)", grade: "memory" }],
});

/** NFPA 70: only 1/0 AWG and larger conductors may be in parallel. */
export function parallelCheck(size: Quantity<"area">, smallest: Quantity<"area">, at: string): Check {
  return parallelLargeEnough({ value: size, limit: smallest, at });
}
