import { type Decimal, Exact, PRECISION } from "./decimal.js";
import type { ProblemCode } from "./input-error.js";

export interface NumberFault {
  readonly code: ProblemCode;
  readonly message: string;
}

const LARGEST_EXPONENT = 60;

/** Reads a decimal number as people write it, digit by digit; a decimal comma and an empty text are faults, never zero. */
export function readNumber(text: string): Decimal | NumberFault {
  const plain = text.replace(/^[\u2212\u2013]/, "-").trim();
  if (plain === "") return { code: "empty", message: "there is no number" };
  if (/^[+-]?\d*,\d+([eE][+-]?\d+)?$/.test(plain)) {
    return { code: "decimal-comma", message: `a decimal comma; write ${plain.replace(",", ".")}` };
  }
  if (/^[+-]?(Infinity|NaN)$/i.test(plain)) return { code: "not-finite", message: "the number must be finite" };
  if (!/^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,4})?$/.test(plain)) {
    return { code: "not-a-number", message: "this is not a decimal number" };
  }
  const value = new Exact(plain);
  if (value.precision() > PRECISION) {
    return { code: "too-many-digits", message: `at most ${PRECISION} significant digits are kept` };
  }
  if (!value.isZero() && Math.abs(value.e) > LARGEST_EXPONENT) {
    return { code: "too-large", message: `the exponent must lie within ±${LARGEST_EXPONENT}` };
  }
  return value;
}

export function isFault(read: Decimal | NumberFault): read is NumberFault {
  return "code" in read;
}
