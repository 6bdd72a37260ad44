/** Maps values to a coordinate along the page. */
export type Scale = (value: number) => number;

/** A straight scale; a range without extent maps to its middle. */
export function scale(from: readonly [number, number], to: readonly [number, number]): Scale {
  const extent = from[1] - from[0];
  if (extent === 0) return () => (to[0] + to[1]) / 2;
  return (value) => to[0] + ((value - from[0]) / extent) * (to[1] - to[0]);
}

const STEPS = [1, 2, 5];

/** Round values from `low` to `high`, about as many as asked for. */
export function ticks(low: number, high: number, about: number): readonly number[] {
  const raw = (high - low) / about;
  if (!(raw > 0)) return [low];
  let power = 1;
  while (power * 10 <= raw) power *= 10;
  while (power > raw) power /= 10;
  const step = power * (STEPS.find((factor) => factor * power >= raw) ?? 10);
  const found: number[] = [];
  // `|| 0`: the ceiling of −0.3 is −0, which would print as such.
  for (let at = Math.ceil(low / step) || 0; at * step <= high; at += 1) found.push(at * step);
  return found;
}

/** Moves blocks apart so that none covers another, each as near as it can be to where it belongs; all within low and high. */
export function spread(
  wanted: readonly number[],
  sizes: readonly number[],
  low: number,
  high: number,
): readonly number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => wanted[a]! - wanted[b]!);
  const placed = [...wanted];
  let least = low;
  for (const index of order) {
    placed[index] = Math.max(placed[index]!, least);
    least = placed[index] + sizes[index]!;
  }
  let most = high;
  for (const index of [...order].reverse()) {
    placed[index] = Math.min(placed[index]!, most - sizes[index]!);
    most = placed[index];
  }
  return placed;
}
