import { add, cutTo, type Digits, half, lastDigit, minus, times } from "../digits.js";
import type { Judgement } from "./judgement.js";
import { isCount, type Point, type PrintedNumber } from "./printed-inputs.js";

/** A case at a point of its inputs: `null` where the rule refuses the point. */
export type JudgeAt = (point: Point) => Judgement | null;

const STEPS = 20;
const SHARE_DECIMALS = 4;
// A value of more digits than quantities keep would be refused.
const DECIMALS = 30;

interface Range {
  readonly number: PrintedNumber;
  readonly middle: Digits;
  readonly reach: Digits;
}

/**
 * Searches the inputs' half-unit ranges for a point that meets the printed digits: each input is pushed to the end that
 * moves the result toward the print, then the line to that corner is halved. `null` where the rule refuses the middle.
 * The share is the part of the ranges that was needed.
 */
export function searchRanges(numbers: readonly PrintedNumber[], nominal: Point, judgeAt: JudgeAt): Judgement | null {
  const middle = judgeAt(nominal);
  if (!middle || middle.agrees) return middle && { ...middle, share: "0" };
  const ranges = numbers
    .filter((number) => !isCount(number))
    .map((number): Range => ({
      number,
      middle: nominal.get(number.name) ?? number.digits,
      reach: half(lastDigit(number.digits)),
    }));
  const corner = new Map(ranges.map((range) => [range, endToward(range, nominal, middle, judgeAt)]));
  const at = (part: Digits): Judgement | null =>
    judgeAt(
      new Map([
        ...nominal,
        ...ranges.map((range) => [range.number.name, pointOf(range, corner.get(range)!, part)] as const),
      ]),
    );

  let near: Digits = { whole: 0n, exponent: 0 };
  let far: Digits = { whole: 1n, exponent: 0 };
  let found = at(far);
  if (!found || found.side === middle.side) return middle;
  for (let step = 0; step < STEPS; step += 1) {
    const part = half(add(near, far));
    const tried = at(part);
    if (!tried) return middle;
    if (tried.side === middle.side) near = part;
    else [far, found] = [part, tried];
  }
  return found.agrees ? { ...found, share: digitsShare(far) } : middle;
}

function digitsShare(part: Digits): string {
  return (Number(part.whole) * 10 ** part.exponent).toFixed(SHARE_DECIMALS).replace(/\.?0+$/, "");
}

function pointOf({ middle, reach }: Range, end: -1 | 0 | 1, part: Digits): Digits {
  if (end === 0) return middle;
  const move = times(reach, part);
  return cutTo(end > 0 ? add(middle, move) : minus(middle, move), DECIMALS);
}

const WHOLE: Digits = { whole: 1n, exponent: 0 };

// Which end of one range brings the result toward the print, all else unmoved; 0 where neither does.
function endToward(range: Range, nominal: Point, from: Judgement, judgeAt: JudgeAt): -1 | 0 | 1 {
  const numberOf = (end: -1 | 1): number => {
    const judged = judgeAt(new Map([...nominal, [range.number.name, pointOf(range, end, WHOLE)]]));
    return judged ? Number(judged.computed) : Number.NaN;
  };
  const [low, high] = [numberOf(-1), numberOf(1)];
  if (low === high || Number.isNaN(low) || Number.isNaN(high)) return 0;
  return high > low === from.side < 0 ? 1 : -1;
}
