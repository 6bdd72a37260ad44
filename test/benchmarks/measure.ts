/** Median time of a call in nanoseconds, over several rounds after warming up. */
export function median(call: () => unknown, calls: number, rounds = 9): number {
  for (let count = 0; count < calls; count += 1) call();
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now();
    for (let count = 0; count < calls; count += 1) call();
    times.push(((performance.now() - start) / calls) * 1e6);
  }
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)]!;
}
