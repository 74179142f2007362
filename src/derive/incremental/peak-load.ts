/**
 * Peak load of a test in stages, with credit for the part of the last stage that was done.
 *
 *     peak = last complete load + (time in the last stage / stage length) · (last load − last complete load)
 *
 * Without it the peak moves in whole stages, and a client who held the last stage for all but a second gets nothing.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";

/** Loads in one unit (W, km/h, %), times in s. */
export function peakLoad(complete: number, last: number, secondsInLast: number, stageLengthS: number): number {
  requireRange(info.id, "stage length", stageLengthS, 5, 3600, "s");
  if (!(secondsInLast >= 0)) throw new OutOfRange(info.id, "time in the last stage", secondsInLast, "0 s or more");
  if (!(Number.isFinite(complete) && Number.isFinite(last)))
    throw new OutOfRange(info.id, "load", Number.NaN, "loads that were recorded");
  return complete + Math.min(1, secondsInLast / stageLengthS) * (last - complete);
}

export const info: FormulaInfo<[number, number, number, number], number> = {
  id: "peak-load",
  revision: 1,
  title: "Peak load with credit for the last stage",
  equation: "peak = complete + (t / T) · (last − complete)",
  inputs: {
    "last complete load": { unit: "W, km/h or %", range: "as recorded" },
    "last load": { unit: "W, km/h or %", range: "as recorded" },
    "time in the last stage": { unit: "s", range: "0 or more" },
    "stage length": { unit: "s", range: "5 to 3600" },
  },
  output: { unit: "W, km/h or %", decimals: 1 },
  source: {
    authors: "Kuipers H, Verstappen FTJ, Keizer HA, Geurten P, van Kranenburg G",
    year: 1985,
    title: "Variability of aerobic performance in the laboratory and its physiologic correlates",
    journal: "Int J Sports Med 6(4):197–201",
    where: "definition of Wmax: last completed load + t/150 · 50 W",
    verified: "memory",
  },
  compute: peakLoad,
  checks: [
    { given: [250, 300, 90, 150], expect: 280, tolerance: 1e-9, from: "by hand: 250 + 90/150 · 50" },
    { given: [250, 300, 150, 150], expect: 300, tolerance: 1e-9, from: "by hand: a completed stage counts whole" },
  ],
};
