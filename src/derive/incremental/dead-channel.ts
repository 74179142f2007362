/**
 * A channel that dies while the others live: a sensor slips, a tube fills with water, a strap loses contact. Its zeros
 * are missing values; a value that stands exactly still for a minute is no breath either. What is found here becomes
 * missing, and whatever needs the channel there is withheld, nothing else.
 */
import { type BreathChannel, CHANNEL_TITLES } from "./samples.js";

export interface DeadRun {
  readonly channel: BreathChannel;
  readonly kind: "missing" | "constant";
  readonly fromS: number;
  readonly toS: number;
}

/** How long a channel may stand still or be missing, s, and in how many samples. Common practice; heart rate can plateau. */
const STILL: readonly (readonly [BreathChannel, number])[] = [
  ["vo2", 45],
  ["vco2", 45],
  ["ve", 45],
  ["heartRate", 150],
  ["petO2", 90],
  ["petCO2", 90],
];
const LOST_S = 30;
const FEWEST = 8;

/** Runs in which a channel stood still or was missing. A channel without a single value is absent, not dead. */
export function deadRuns(time: Float64Array, channel: BreathChannel, xs: Float64Array): DeadRun[] {
  const limit = STILL.find(([name]) => name === channel)?.[1];
  if (limit === undefined) return [];
  const out: DeadRun[] = [];
  const n = xs.length;
  let from = 0;
  let any = false;
  for (let i = 0; i < n; i++) any ||= !Number.isNaN(xs[i] as number);
  if (!any) return [];
  for (let i = 1; i <= n; i++) {
    if (i < n && Object.is(xs[i], xs[from])) continue;
    const missing = Number.isNaN(xs[from] as number);
    const lasted = (time[i - 1] as number) - (time[Math.max(0, from - 1)] as number);
    if (i - from >= FEWEST && lasted >= (missing ? LOST_S : limit))
      out.push({
        channel,
        kind: missing ? "missing" : "constant",
        fromS: from === 0 ? Number.NEGATIVE_INFINITY : (time[from - 1] as number),
        toS: time[i - 1] as number,
      });
    from = i;
  }
  return out;
}

export const watched: readonly BreathChannel[] = STILL.map(([name]) => name);

export function describeDead(run: DeadRun): string {
  const from = Number.isFinite(run.fromS) ? `${Math.round(run.fromS)}` : "the start";
  const what = run.kind === "missing" ? "was not recorded" : "stood still, as no living signal does,";
  return `${CHANNEL_TITLES[run.channel]} ${what} from ${from} to ${Math.round(run.toS)} s`;
}
