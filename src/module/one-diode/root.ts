const MOST_STEPS = 300;

/**
 * Root of a rising function in a bracket: Newton's step where it stays inside and shrinks fast, else the middle.
 * Ends when no double lies between the ends or the value is zero, so that it always ends and never leaves the bracket.
 *
 * @param f - value and slope at a point; not above zero at the lower end, not below it at the upper
 * @internal
 */
export function rootIn(
  low: number,
  high: number,
  f: (x: number) => { readonly value: number; readonly slope: number },
): number {
  let [a, b] = [low, high];
  let x = (a + b) / 2;
  let width = b - a;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { value, slope } = f(x);
    if (value === 0) return x;
    if (value > 0) b = x;
    else a = x;
    const newton = x - value / slope;
    const shrank = b - a <= width / 2;
    width = b - a;
    const next = newton > a && newton < b && (shrank || step % 2 === 0) ? newton : a + (b - a) / 2;
    if (next === x || !(next > a && next < b)) return x;
    x = next;
  }
  return x;
}
