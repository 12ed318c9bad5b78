/** The known word nearest to a mistyped one, or undefined when none is near: at most a third of its letters may differ. */
export function closest(word: string, known: readonly string[]): string | undefined {
  const typed = word.slice(0, 60).toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 0.5;
  for (const candidate of known) {
    const distance = editDistance(typed, candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

/** Letters to insert, delete, replace or swap with a neighbour to turn one word into the other. */
function editDistance(a: string, b: string): number {
  let older: number[] = [];
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let cost = Math.min((previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (previous[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        cost = Math.min(cost, (older[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    older = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}
