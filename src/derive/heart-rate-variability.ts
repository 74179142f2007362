/** Heart rate variability in the time domain, from the RR intervals of a short record at rest. */

import type { Cell } from "../kernel/measure.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";
import { attempt, foundOrWithheld } from "./found-or-withheld.js";
import * as ln from "./heart-rate-variability/ln-rmssd.js";
import * as meanRr from "./heart-rate-variability/mean-rr.js";
import * as normal from "./heart-rate-variability/normal-intervals.js";
import * as pnn50 from "./heart-rate-variability/pnn50.js";
import * as rmssd from "./heart-rate-variability/rmssd.js";
import * as sdnn from "./heart-rate-variability/sdnn.js";

/** Above this share of intervals left out a short record is not used (common practice). */
const MOST_ARTEFACTS_PCT = 5;

const INDICES = [
  ["hrv_mean_rr", meanRr.info],
  ["hrv_sdnn", sdnn.info],
  ["hrv_rmssd", rmssd.info],
  ["hrv_ln_rmssd", ln.info],
  ["hrv_pnn50", pnn50.info],
] as const;

export function deriveHeartRateVariability(book: Notebook, visit: Visit): void {
  const block = visit.session.heart_rate_variability;
  if (block === undefined) return;
  const { hrv_window_s: window, hrv_settling_s: settling } = visit.choices;
  const part = attemptPart(visit, settling, window);
  if (typeof part === "string") {
    withholdAll(book, ["hrv_record", "hrv_artefact_share", ...INDICES.map(([id]) => id)], part);
    return;
  }
  const inputs: Ref[] = [
    { name: "series", value: block.series ?? "", unit: "" },
    { name: "settling dropped", value: settling, unit: "s" },
    { name: "window", value: window, unit: "s" },
  ];
  const filtered = attempt(() => normal.normalIntervals(part));
  if (filtered.because !== undefined) {
    withholdAll(book, ["hrv_record", "hrv_artefact_share", ...INDICES.map(([id]) => id)], filtered.because);
    return;
  }
  const nn = filtered.value;
  const left = nn.filter((x) => x === null).length;
  const share = (100 * left) / nn.length;
  const cells: Cell[] = [window, settling, nn.length, left, block.posture ?? null, block.breathing ?? null];
  const columns = [
    { key: "window_s", title: "Window", unit: "s", decimals: 0 },
    { key: "settling_s", title: "Settling dropped", unit: "s", decimals: 0 },
    { key: "intervals", title: "Intervals", decimals: 0 },
    { key: "left_out", title: "Left out", decimals: 0 },
    { key: "posture", title: "Posture" },
    { key: "breathing", title: "Breathing" },
  ];
  book.table("hrv_record", columns, [cells], normal.info, inputs);
  book.found("hrv_artefact_share", share, normal.info, inputs);
  if (share > MOST_ARTEFACTS_PCT) {
    const because = `${toDecimals(share, 1)} % of the intervals were left out, more than the ${MOST_ARTEFACTS_PCT} % up to which a short record is used`;
    withholdAll(
      book,
      INDICES.map(([id]) => id),
      because,
    );
    return;
  }
  const note = `${window} s${block.posture === undefined ? ", posture not recorded" : `, ${block.posture}`}`;
  for (const [id, info] of INDICES) foundOrWithheld(book, id, info, inputs, () => info.compute(nn), { note });
}

/** Intervals of the window after the settling time, or the reason why there are none. */
function attemptPart(visit: Visit, settlingS: number, windowS: number): number[] | string {
  const block = visit.session.heart_rate_variability;
  if (block?.series === undefined) return "no series of RR intervals is named";
  if (block.recorder === "optical sensor") return "an optical sensor gives pulse intervals, which are not RR intervals";
  const rr = visit.series[block.series]?.channels.rr_ms;
  if (rr === undefined) return `${block.series} holds no RR intervals`;
  let elapsed = 0;
  const part: number[] = [];
  for (const x of rr) {
    const before = elapsed;
    if (Number.isFinite(x)) elapsed += x / 1000;
    if (before >= settlingS && elapsed <= settlingS + windowS) part.push(x);
  }
  // The window's last beat seldom falls on its end: two long intervals may be missing.
  const needed = settlingS + windowS;
  return elapsed < needed - 2
    ? `the record holds ${elapsed.toFixed(0)} s, but ${needed} s are needed (${settlingS} s to settle and a window of ${windowS} s)`
    : part;
}

function withholdAll(book: Notebook, ids: readonly MeasureId[], because: string): void {
  for (const id of ids) book.withhold(id, because);
}
