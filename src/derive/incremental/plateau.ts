/**
 * Did uptake level off while work still rose? Fits this client's submaximal line of uptake on work, then compares the
 * rise over the last minute (or stage) with what the line foretells. Work enters as the body feels it (workload.ts).
 */
import { OutOfRange } from "../../kernel/formula.js";
import { compareAtDecimals } from "../../kernel/rounding.js";
import { fitLine } from "../../kernel/statistics.js";
import { meanIn } from "./best-window.js";
import { halfExpectedRise, PLATEAU_SHARE } from "./half-expected-rise.js";
import { breathNoise, channelOf, usableWidth } from "./peak.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";
import type { Stages } from "./stages.js";
import { feltLoad } from "./workload.js";

export interface Plateau {
  /** L/min per unit of work. */
  readonly slope: number;
  readonly workRise: number;
  readonly observed: number;
  readonly expected: number;
  readonly ratio: number;
  /** Standard error of the ratio, from the noise of the samples and the error of the slope. */
  readonly ratioSe: number;
  readonly apartS: number;
  readonly verdict: "plateau" | "no plateau" | "cannot tell";
}

/** How many standard errors a rise must lie below the expected one before a plateau is claimed (about 97.5 %). */
const SURE = 1.96;
const WALKS_BELOW_KM_H = 7;
/** Largest standard error of the submaximal slope, as a share of it: this project's choice. */
const LARGEST_SLOPE_ERROR = 0.2;

export function plateauOf(
  test: Prepared,
  span: PhaseSpan,
  stages: Stages,
  chosenS: number,
): { plateau: Plateau } | { because: string } {
  const b = test.breaths;
  if (test.workUnit === "none") return { because: "the workload was not recorded" };
  if (!test.timed) return { because: "the samples have no times" };
  const width = usableWidth(test, chosenS);
  const felt = feltLoad(b.time, test.work);
  const x: number[] = [];
  const y: number[] = [];
  const from = span.fromS + Math.min(120, 0.25 * (span.toS - span.fromS));
  const to = span.toS - Math.max(90, 0.25 * (span.toS - span.fromS));
  for (let i = 0; i < b.n; i++) {
    const t = b.time[i] as number;
    if (b.excluded[i] !== 0 || !(t > from && t <= to)) continue;
    if (Number.isNaN(b.vo2[i] as number) || Number.isNaN(felt[i] as number)) continue;
    if (test.running && (b.speed[i] as number) < WALKS_BELOW_KM_H) continue; // another gait, another line
    x.push(felt[i] as number);
    y.push(b.vo2[i] as number);
  }
  const spanned = test.breathByBreath ? x.length * test.intervalS : to - from;
  const fewest = test.breathByBreath ? 30 : 4;
  if (x.length < fewest || to - from < 120 || spanned < 90)
    return { because: "the submaximal part is too short for a line of uptake on work" };
  if (Math.max(...x) - Math.min(...x) <= 1e-6) return { because: "work did not rise in the submaximal part" };
  const line = fitLine(x, y);
  if (line.slope > 0 && line.slopeSe > LARGEST_SLOPE_ERROR * line.slope)
    return { because: "the submaximal line of uptake on work is too uncertain to foretell a rise" };

  let last = span.toS;
  for (let i = b.n - 1; i >= 0; i--)
    if (b.excluded[i] === 0 && (b.time[i] as number) <= span.toS + 1e-9) {
      last = b.time[i] as number;
      break;
    }
  const apartS = Math.max(
    width,
    stages.kind === "step" ? stages.lengthS : stages.kind === "typed" ? test.intervalS : 60,
  );
  const uptake = channelOf(test, "vo2");
  const work = { ...uptake, xs: felt };
  const at = (end: number) => ({
    o2: meanIn(uptake, end - width, end, 0.5),
    load: meanIn(work, end - width, end, 0.5),
  });
  const now = at(last);
  const then = at(last - apartS);
  if (!now.o2 || !then.o2 || !now.load || !then.load)
    return { because: "the last windows are not filled with kept samples" };
  const breath = breathNoise(test, span);
  const noise = breath ? breath.sd * Math.sqrt(breath.shared) : Math.sqrt(line.rss / Math.max(1, line.n - 2));
  const observed = now.o2.mean - then.o2.mean;
  const workRise = now.load.mean - then.load.mean;
  try {
    const ratio = halfExpectedRise(line.slope, workRise, observed);
    const expected = line.slope * workRise;
    // Both the observed and the expected rise are uncertain: the one by breath noise, the other by the fitted slope.
    const ratioSe = Math.hypot((noise * Math.sqrt(1 / now.o2.n + 1 / then.o2.n)) / expected, line.slopeSe / line.slope);
    const low = compareAtDecimals(ratio, PLATEAU_SHARE, 2) <= 0;
    const verdict = !low ? "no plateau" : ratio + SURE * ratioSe < 1 ? "plateau" : "cannot tell";
    return { plateau: { slope: line.slope, workRise, observed, expected, ratio, ratioSe, apartS, verdict } };
  } catch (error) {
    if (!(error instanceof OutOfRange)) throw error;
    return { because: error.message };
  }
}
