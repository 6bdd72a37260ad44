import { seed } from "../harness/random.js";

const WORD = 2 ** 32;

/** A stream of numbers from 0 to 1 that the seed of the run and a name fix. */
export function randomOf(name: string): () => number {
  let state = seed >>> 0;
  for (const letter of name) state = Math.imul(state ^ letter.codePointAt(0)!, 0x01000193) >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let word = Math.imul(state ^ (state >>> 15), state | 1);
    word ^= word + Math.imul(word ^ (word >>> 7), word | 61);
    return ((word ^ (word >>> 14)) >>> 0) / WORD;
  };
}
