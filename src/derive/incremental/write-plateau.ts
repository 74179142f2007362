/** Writes the two findings that may make a peak a maximum: a plateau, and a verification bout. */
import type { Notebook } from "../../kernel/notebook.js";
import { compareAtDecimals, roundTo, toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { info as bestWindow } from "./best-window.js";
import { info as halfExpectedRise } from "./half-expected-rise.js";
import { windowRefs } from "./peak.js";
import { plateauOf } from "./plateau.js";
import type { Prepared } from "./prepare.js";
import type { Stages } from "./stages.js";
import { AGREEMENT, info as difference, verificationDifference } from "./verification-difference.js";
import type { Peaks } from "./write-peak.js";
import { incrementalSpan } from "./write-tables.js";

const named = (info: { id: string; revision: number }) => `${info.id} r${info.revision}`;

export function writePlateau(book: Notebook, visit: Visit, test: Prepared, stages: Stages | undefined): void {
  const span = incrementalSpan(test);
  if (span === undefined || stages === undefined || book.value("vo2_peak") === undefined) {
    book.withhold("plateau", "peak oxygen uptake is not given");
    return;
  }
  if (test.phasesFrom === "none") {
    book.withhold("plateau", "the phases of the test are not known");
    return;
  }
  const outcome = plateauOf(test, span, stages, visit.choices.peak_window_s);
  if ("because" in outcome) {
    book.withhold("plateau", outcome.because);
    return;
  }
  const p = outcome.plateau;
  const moved = `uptake ${p.observed < 0 ? "fell" : "rose"} by ${toDecimals(Math.abs(1000 * p.observed), 0)} mL/min`;
  const rise = `Over the last ${Math.round(p.apartS)} s ${moved}, where a rise of ${toDecimals(1000 * p.expected, 0)} mL/min was expected from the work`;
  const because = {
    plateau: `${rise}: half or less.`,
    "no plateau": `${rise}: it was still rising with work.`,
    "cannot tell": `${rise}. Breaths vary too much to be sure that it levelled off.`,
  }[p.verdict];
  book.judge("plateau", p.verdict, because, {
    rule: named(halfExpectedRise),
    inputs: [
      { name: "slope", text: `${toDecimals(1000 * p.slope, 2)} mL/min per ${test.workUnit}` },
      { name: "rise of work", text: `${toDecimals(p.workRise, 1)} ${test.workUnit}` },
      { name: "ratio", text: `${toDecimals(p.ratio, 2)} (standard error ${toDecimals(p.ratioSe, 2)})` },
    ],
  });
}

export function writeVerification(book: Notebook, visit: Visit, test: Prepared, peaks: Peaks): void {
  const typed = visit.session.incremental?.verification;
  const stated = test.phases.some((s) => s.phase === "verification");
  if (typed === undefined && !stated) return;
  const file = visit.session.incremental?.series ?? visit.file;
  if (peaks.verification !== undefined) {
    const refs = windowRefs(peaks.verification, file);
    book.found("verification_vo2", peaks.verification.mean, bestWindow, refs);
  } else if (typed?.vo2_peak_l_min !== undefined)
    book.record("verification_vo2", typed.vo2_peak_l_min, `${visit.file} incremental.verification.vo2_peak_l_min`);
  else book.withhold("verification_vo2", "no window of the bout is filled, and no value was typed");
  const bout = book.value("verification_vo2");
  if (bout === undefined || peaks.incremental === undefined) {
    book.withhold(
      "verification",
      bout === undefined ? "uptake of the bout is not given" : "the incremental peak is not given",
    );
    return;
  }
  const light = tooLight(typed?.power_w, book.value("power_peak"));
  if (light !== undefined) {
    book.judge("verification", "not attained", light, { rule: named(difference) });
    return;
  }
  const d = verificationDifference(bout, peaks.incremental.mean);
  const text = `${toDecimals(Math.abs(d), 1)} % ${d < 0 ? "below" : "above"}`;
  const inside = compareAtDecimals(Math.abs(d), AGREEMENT, 1) <= 0;
  const verdict = inside ? "confirmed" : d > 0 ? "incremental test not maximal" : "not attained";
  const because = inside
    ? `The bout reached an uptake within ${AGREEMENT} % of the incremental peak (${text}).`
    : d > 0
      ? `The bout reached an uptake ${text} the incremental peak, so that one was not the maximum.`
      : `The bout ended ${text} the incremental peak: too short or too tired, it neither confirms nor refutes.`;
  book.judge("verification", verdict, because, {
    rule: named(difference),
    inputs: [
      { name: "verification", text: `${toDecimals(bout, 2)} L/min`, measure: "verification_vo2" },
      { name: "incremental peak", text: `${toDecimals(peaks.incremental.mean, 2)} L/min` },
      { name: "difference", text: `${toDecimals(roundTo(d, 1), 1)} %` },
    ],
  });
}

/** Share of the peak power below which a bout is no test of the maximum: this project's choice. */
const LEAST_POWER = 0.8;

function tooLight(power: number | undefined, peak: number | undefined): string | undefined {
  if (power === undefined || peak === undefined || power >= LEAST_POWER * peak) return undefined;
  return `The bout was made at ${toDecimals(power, 0)} W, less than ${100 * LEAST_POWER} % of the peak power of ${toDecimals(peak, 0)} W: it can neither confirm nor refute a maximum.`;
}
