/** Which known word a misspelt one was probably meant to be. */

/** Edits (insert, delete, replace, swap of neighbours) between two words; stops counting above `most`. */
export function editDistance(a: string, b: string, most = 4): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? most + 1;
}

/**
 * The nearest of the known words, if it is near enough to be a slip: one edit in three letters, at most three.
 * Case, spaces, hyphens and points do not count.
 */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const plain = (text: string) => text.toLowerCase().replace(/[\s._-]+/g, "_");
  let best: string | undefined;
  let least = Math.min(3, Math.floor(word.length / 3)) + 1;
  for (const candidate of known) {
    const distance = plain(candidate) === plain(word) ? 0 : editDistance(plain(word), plain(candidate));
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}
