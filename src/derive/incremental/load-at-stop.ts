/**
 * Samples at the end of a bout whose load has already fallen: the first row of recovery, written at the very second the
 * client stopped, or a stop noted a few seconds late. What was breathed still belongs to the bout; the load no longer does.
 */
import type { PhaseSpan } from "./phases.js";

/** How long before the end of a bout a fallen load is looked for, s: a stop is written down within a breath or two. */
const NOTED_LATE_S = 10;
/** No protocol takes away half of the highest load while the client goes on. */
const FALLEN = 0.5;

/** Indices, latest first, of the samples that carry the load of the recovery although they belong to a bout. */
export function loadsAfterStop(
  time: Float64Array,
  work: Float64Array,
  excluded: Uint8Array,
  spans: readonly PhaseSpan[],
): number[] {
  const found: number[] = [];
  for (const { phase, fromS, toS } of spans) {
    if (phase !== "incremental" && phase !== "verification") continue;
    const inside = [...time.keys()].filter((i) => {
      const t = time[i] as number;
      return excluded[i] !== 1 && t > fromS && t <= toS + 1e-9;
    });
    const highest = inside.reduce((most, i) => Math.max(most, (work[i] as number) || 0), 0);
    for (const i of inside.reverse()) {
      if (!((work[i] as number) < FALLEN * highest) || (time[i] as number) < toS - NOTED_LATE_S) break;
      found.push(i);
    }
  }
  return found;
}

/** The loads with those samples left without one. */
export function withoutLoadAt<Columns extends Readonly<Record<"power" | "speed" | "grade", Float64Array>>>(
  columns: Columns,
  indices: readonly number[],
): Columns {
  const blank = (channel: "power" | "speed" | "grade") => {
    const copy = columns[channel].slice();
    for (const i of indices) copy[i] = Number.NaN;
    return copy;
  };
  return { ...columns, power: blank("power"), speed: blank("speed"), grade: blank("grade") };
}
