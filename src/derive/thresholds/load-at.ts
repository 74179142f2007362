/** Load and perceived exertion at a moment of the incremental phase. */
import type { Breaths } from "../../kernel/breaths.js";
import { readAt } from "./value-at-threshold.js";

export type Load = "speed" | "grade" | "power";

/** Reads a load at a moment: that of the sample which ends at or after it. undefined where it was not recorded or, for a grade, never changed. */
export function loadsAt(
  breaths: Breaths,
  load: Load,
  fromS: number,
  toS: number,
): ((moment: number) => number | undefined) | undefined {
  const time: number[] = [];
  const values: number[] = [];
  for (let i = 0; i < breaths.n; i++) {
    const t = breaths.time[i] as number;
    const value = breaths[load][i] as number;
    if (!(t > fromS && t <= toS) || breaths.excluded[i] === 1 || Number.isNaN(value)) continue;
    time.push(t);
    values.push(value);
  }
  const highest = values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const lowest = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  if (values.length === 0 || (load === "grade" && highest === lowest) || (load !== "grade" && !(highest > 0)))
    return undefined;
  return (moment) => {
    if (!(moment > fromS)) return undefined;
    const k = time.findIndex((t) => t >= moment);
    return k < 0 ? undefined : values[k];
  };
}

/** Between the answer before and the answer after a moment; undefined where either lacks. */
export function rpeAt(breaths: Breaths, moment: number): number | undefined {
  const asked = [...breaths.rpe.keys()].filter((i) => Number.isFinite(breaths.rpe[i]));
  return readAt(
    asked.map((i) => breaths.time[i] as number),
    asked.map((i) => breaths.rpe[i] as number),
    moment,
  );
}
