/**
 * The median of a window that moves along a series: values enter and leave one by one and are kept in order, so that no
 * window is sorted anew. The median is that of quantile() in statistics.ts.
 */
export interface MovingWindow {
  /** The first `size` are in the window, in rising order. */
  readonly sorted: Float64Array;
  size: number;
}

/** An empty window for at most `most` values at a time. */
export const movingWindow = (most: number): MovingWindow => ({ sorted: new Float64Array(most), size: 0 });

/** Takes x in; not NaN. */
export function enter(window: MovingWindow, x: number): void {
  const at = placeOf(window, x);
  move(window.sorted, at, at + 1, window.size - at);
  window.sorted[at] = x;
  window.size++;
}

/** Lets x out, which must be in the window. */
export function leave(window: MovingWindow, x: number): void {
  const at = placeOf(window, x);
  window.size--;
  move(window.sorted, at + 1, at, window.size - at);
}

/** How many values in the window are below x. */
function placeOf({ sorted, size }: MovingWindow, x: number): number {
  let low = 0;
  let high = size;
  while (low < high) {
    const half = (low + high) >> 1;
    if ((sorted[half] as number) < x) low = half + 1;
    else high = half;
  }
  return low;
}

/** Few values are moved faster one by one than by a call of copyWithin. */
const FEW = 40;

/** Moves `count` values by one place. */
function move(sorted: Float64Array, from: number, to: number, count: number): void {
  if (count > FEW) sorted.copyWithin(to, from, from + count);
  else if (to > from) for (let i = count - 1; i >= 0; i--) sorted[to + i] = sorted[from + i] as number;
  else for (let i = 0; i < count; i++) sorted[to + i] = sorted[from + i] as number;
}

/** Median of what is in the window, which must not be empty. */
export function middle({ sorted, size }: MovingWindow): number {
  const high = sorted[size >> 1] as number;
  if (size % 2 === 1) return high;
  const low = sorted[(size >> 1) - 1] as number;
  return low + (high - low) / 2;
}
