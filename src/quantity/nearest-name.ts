/** Edits (insert, drop, replace, swap) that turn one word into another. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      let best = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
}

/** The known name nearest to a misspelt one, or `undefined` where none is near enough to be meant. */
export function nearestName(name: string, known: readonly string[]): string | undefined {
  const asked = name.slice(0, 80).toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.ceil(asked.length / 3)) + 1;
  for (const candidate of known) {
    const edits = distance(asked, candidate.toLowerCase());
    if (edits < least) [best, least] = [candidate, edits];
  }
  return best;
}
