/** Differences of neighbouring normal intervals, ms; none across an interval that was left out. */
export function successiveDifferences(nn: readonly (number | null)[]): number[] {
  const out: number[] = [];
  for (let i = 1; i < nn.length; i++) {
    const [before, now] = [nn[i - 1], nn[i]];
    if (typeof before === "number" && typeof now === "number") out.push(now - before);
  }
  return out;
}
