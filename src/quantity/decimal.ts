import { Decimal } from "decimal.js";

/** Digits that every operation keeps. */
export const PRECISION = 34;

/** Digits that a value marked *rounded* is trusted to; the six spare ones absorb what a chain of operations loses. */
export const ROUNDED_KEEPS = 28;

// `defaults: true` keeps a host's own settings out; cloning keeps ours from reaching the host.
export const Exact = /* @__PURE__ */ Decimal.clone({
  defaults: true,
  precision: PRECISION,
  rounding: 6,
  toExpNeg: -80,
  toExpPos: 80,
});

// Twice the precision and more holds any single product or sum of two 34-digit numbers, so it can prove exactness.
export const Wide = /* @__PURE__ */ Decimal.clone({
  defaults: true,
  precision: 200,
  toExpNeg: -400,
  toExpPos: 400,
});

/** A value together with the number of digits it can be trusted to (`Infinity` while it is exact). */
export interface Kept {
  readonly value: Decimal;
  readonly keeps: number;
}

export type { Decimal };
