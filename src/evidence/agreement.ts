import { absolute, type Digits, half, lastDigit, minus, order, ratio } from "./digits.js";
import type { Rounding } from "./formats/index.js";

const SHARE_DECIMALS = 4;

/** Whether a computed value agrees with a printed one, and how much of what the last printed digit allows is used. */
export interface Agreement {
  readonly agrees: boolean;
  /** From 0 (equal) to 1 (at the limit), or more; `null` where only equality counts. */
  readonly share: string | null;
}

/**
 * Compares by the printed digits alone. With u one unit of the last printed digit, c computed and p printed:
 * nearest |c − p| ≤ u/2; cut |p| ≤ |c| < |p| + u; up |p| − u < |c| ≤ |p|; exact c = p.
 */
export function agreement(computed: Digits, printed: Digits, rounding: Rounding, unit = lastDigit(printed)): Agreement {
  if (rounding === "exact") return { agrees: order(computed, printed) === 0, share: null };
  if (rounding === "nearest") {
    const distance = absolute(minus(computed, printed));
    const allowed = half(unit);
    return { agrees: order(distance, allowed) <= 0, share: ratio(distance, allowed, SHARE_DECIMALS) };
  }
  const [c, p] = [absolute(computed), absolute(printed)];
  const sameSide = computed.whole === 0n || printed.whole === 0n || computed.whole < 0n === printed.whole < 0n;
  const beyond = rounding === "cut" ? minus(c, p) : minus(p, c);
  const agrees = sameSide && beyond.whole >= 0n && order(beyond, unit) < 0;
  return { agrees, share: ratio(absolute(beyond), unit, SHARE_DECIMALS) };
}

/** Whether a computed value lies above the values that agree with a printed one (1), below them (−1) or among them (0). */
export function sideOf(computed: Digits, printed: Digits, rounding: Rounding): -1 | 0 | 1 {
  return agreement(computed, printed, rounding).agrees ? 0 : order(computed, printed);
}
