import type { Check } from "../formula/index.js";

/**
 * A check whose limit depends on something unknown: met where the strictest limit is met, not met where even the mildest
 * is not, open in between.
 */
export function strictThenMild(strict: Check, mild: Check, open: () => Check): Check {
  if (strict.verdict === "met") return strict;
  return mild.verdict === "not met" ? mild : open();
}
