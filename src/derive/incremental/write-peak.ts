/** Writes peak uptake and what belongs to its window. */
import type { MeasurementError } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import * as rer from "../gas/respiratory-exchange-ratio.js";
import { info as bestWindow, longestHole } from "./best-window.js";
import * as pulse from "./oxygen-pulse.js";
import {
  bestOf,
  channelOf,
  type Peak,
  peakError,
  peakUptake,
  sameWindow,
  WINDOWS_S,
  whyMissing,
  windowRefs,
} from "./peak.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";
import { isGap } from "./rhythm.js";
import type { BreathChannel } from "./samples.js";
import { info as uptakePerMass } from "./uptake-per-mass.js";
import { incrementalSpan } from "./write-tables.js";

export interface Peaks {
  readonly incremental?: Peak;
  readonly verification?: Peak;
  /** RER in the window of the incremental peak: what signs of effort are judged by. */
  readonly rer?: number;
}

export function writePeak(book: Notebook, visit: Visit, test: Prepared): Peaks {
  const width = visit.choices.peak_window_s;
  const file = visit.session.incremental?.series ?? visit.file;
  const span = incrementalSpan(test);
  if (span === undefined) {
    book.withhold("vo2_peak", "the series holds no incremental phase");
    return {};
  }
  const found = peakUptake(test, span, width);
  const bout = test.phases.find((s) => s.phase === "verification");
  const second = bout === undefined ? undefined : peakUptake(test, bout, width);
  const incremental = "peak" in found ? found.peak : undefined;
  const verification = second !== undefined && "peak" in second ? second.peak : undefined;
  if (incremental === undefined) {
    book.withhold("vo2_peak", "because" in found ? found.because : "");
    book.compute("vo2_peak_per_mass", uptakePerMass, ["vo2_peak", "body_mass"]);
    for (const id of ["rer_peak", "oxygen_pulse_peak"] as const)
      book.withhold(id, "peak oxygen uptake is not given, so there is no window to take it from");
    ventilationAlone(book, test, span, width, file);
    return {};
  }
  const higher = verification !== undefined && verification.mean > incremental.mean ? verification : incremental;
  writeWindow(book, test, higher, file);
  windowEffect(book, test, span, higher, width, file);
  const vco2 = sameWindow(test, "vco2", incremental);
  return {
    incremental,
    ...(verification === undefined ? {} : { verification }),
    ...(vco2 === undefined ? {} : { rer: vco2 / incremental.mean }),
  };
}

function writeWindow(book: Notebook, test: Prepared, peak: Peak, file: string): void {
  const refs = windowRefs(peak, file);
  const error = peakError(test, peak);
  const notes: string[] = [];
  if (peak.span.phase === "verification") notes.push("reached in the verification bout");
  if (!test.timed) notes.push("one typed mean; how long it lasted is not stated");
  else if (peak.n === 1)
    notes.push(`one recorded mean of ${Math.round(peak.widthS)} s; a shorter window is not to be had`);
  const hole = test.timed && peak.n > 1 ? longestHole(channelOf(test, "vo2"), peak) : 0;
  if (isGap(hole, test.intervalS))
    notes.push(`no uptake was recorded for ${Math.round(hole)} s of the window, so the mean is that of the rest`);
  if (test.phasesFrom === "workload") notes.push("phases detected: confirm");
  if (test.phasesFrom === "none") notes.push("phases not known: the whole series was searched");
  book.found("vo2_peak", peak.mean, bestWindow, refs, {
    ...(error === undefined ? {} : { error }),
    ...(notes.length === 0 ? {} : { note: `${notes.join("; ")}.` }),
  });
  const mass = book.value("body_mass");
  const perMass = error === undefined || mass === undefined ? undefined : scaled(error, 1000 / mass);
  book.compute("vo2_peak_per_mass", uptakePerMass, ["vo2_peak", "body_mass"], perMass ? { error: perMass } : {});
  const same: readonly (readonly [MeasureId, BreathChannel])[] = [
    ["vco2_at_peak", "vco2"],
    ["ventilation_peak", "ve"],
    ["breathing_frequency_peak", "breathingFrequency"],
    ["heart_rate_at_peak", "heartRate"],
  ];
  for (const [id, channel] of same) {
    const mean = sameWindow(test, channel, peak);
    if (mean === undefined) book.withhold(id, whyMissing(test, channel, peak.fromS, peak.toS));
    else book.found(id, mean, bestWindow, refs, { note: "Mean of the window of peak uptake." });
  }
  book.compute("rer_peak", rer.info, ["vco2_at_peak", "vo2_peak"]);
  book.compute("oxygen_pulse_peak", pulse.info, ["vo2_peak", "heart_rate_at_peak"]);
}

/** The interval of the peak in another unit; the error of the scales is small beside it and left out. */
function scaled(error: MeasurementError, factor: number): MeasurementError {
  const { low, high } = error;
  return {
    ...(low === undefined ? {} : { low: low * factor }),
    ...(high === undefined ? {} : { high: high * factor }),
    from: error.from,
  };
}

/** Without uptake there is no window to share: ventilation keeps its own best mean. */
function ventilationAlone(book: Notebook, test: Prepared, span: PhaseSpan, width: number, file: string): void {
  const best = bestOf(test, "ve", span, width);
  if (best === undefined) {
    book.withhold("ventilation_peak", whyMissing(test, "ve", span.fromS, span.toS));
    return;
  }
  book.found("ventilation_peak", best.mean, bestWindow, windowRefs({ ...best, span, widthS: width }, file), {
    note: "Its own highest mean, for peak uptake is not given.",
  });
}

function windowEffect(book: Notebook, test: Prepared, span: PhaseSpan, peak: Peak, chosen: number, file: string): void {
  if (!test.breathByBreath && test.intervalS > 15) return; // means over longer than that leave nothing to choose
  const mass = book.value("body_mass");
  const where = peak.span.phase === "verification" ? peak.span : span;
  book.table(
    "vo2_peak_window_effect",
    [
      { key: "window_s", title: "Window", unit: "s", decimals: 0 },
      { key: "vo2_l_min", title: "Peak uptake", unit: "L/min", decimals: 2 },
      { key: "vo2_ml_kg_min", title: "Per kilogram", unit: "mL/kg/min", decimals: 1 },
      { key: "difference_pct", title: "Against the chosen window", unit: "%", decimals: 1 },
      { key: "chosen", title: "Chosen" },
    ],
    WINDOWS_S.map((seconds) => {
      const best = seconds === chosen ? peak : bestOf(test, "vo2", where, seconds);
      const mark = seconds === chosen ? "yes" : "no";
      if (best === undefined) return [seconds, null, null, null, mark];
      const perMass = mass === undefined ? null : (1000 * best.mean) / mass;
      return [seconds, best.mean, perMass, 100 * (best.mean / peak.mean - 1), mark];
    }),
    bestWindow,
    [{ name: "series", value: file, unit: "" }],
    "The same test, averaged over other windows. Compare only values of one window.",
  );
}
