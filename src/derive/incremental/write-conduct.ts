/** Heart rate, loads and how the test went. */

import type { FormulaInfo } from "../../kernel/formula.js";
import type { Choices } from "../../kernel/generated/choices.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { roundTo } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { info as sharePercent } from "../arithmetic/share-percent.js";
import { hasValues } from "../columns.js";
import { info as bestWindow } from "./best-window.js";
import { info as gellish } from "./gellish-2007.js";
import { LOWERING } from "./maximality.js";
import { info as nes } from "./nes-2013.js";
import { bestOf, whyMissing, windowRefs } from "./peak.js";
import { info as peakLoad } from "./peak-load.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";
import type { Stages } from "./stages.js";
import { info as tanaka } from "./tanaka-2001.js";
import { endUnknown, incrementalSpan } from "./write-tables.js";

const EQUATIONS: Readonly<Record<Choices["hrmax_equation"], FormulaInfo<[number], number>>> = {
  "tanaka-2001": tanaka,
  "gellish-2007": gellish,
  "nes-2013": nes,
};
/** A heart rate that lasted this long counts as reached. */
const HEART_WINDOW_S = 5;

export function writeHeartRate(book: Notebook, visit: Visit, test: Prepared | undefined): void {
  const block = visit.session.incremental;
  const spans = test?.phases.filter((s) => s.phase === "incremental" || s.phase === "verification") ?? [];
  const found =
    test === undefined
      ? []
      : spans.map((span) => ({
          span,
          best: reachesEnd(test, span) ? bestOf(test, "heartRate", span, HEART_WINDOW_S) : undefined,
        }));
  const [first, second] = found;
  const higher = (second?.best?.mean ?? 0) > (first?.best?.mean ?? 0) ? second : first;
  if (test !== undefined && higher?.best !== undefined) {
    const width = test.breathByBreath ? HEART_WINDOW_S : test.intervalS;
    const refs = windowRefs({ ...higher.best, span: higher.span, widthS: width }, block?.series ?? visit.file);
    const bout = higher.span.phase === "verification" ? " It was reached in the verification bout." : "";
    book.found("heart_rate_peak", higher.best.mean, bestWindow, refs, {
      note: `Highest ${Math.round(width)}-s mean, not tied to the window of peak uptake.${bout}`,
    });
  } else if (block?.heart_rate_peak_bpm !== undefined)
    book.record("heart_rate_peak", block.heart_rate_peak_bpm, `${visit.file} incremental.heart_rate_peak_bpm`);
  else
    book.withhold(
      "heart_rate_peak",
      test === undefined || higher === undefined
        ? "heart rate was not recorded"
        : `${whyMissing(test, "heartRate", higher.span.fromS, higher.span.toS)}${
            hasValues(test.breaths.heartRate) ? ": the peak may lie in the part that is missing" : ""
          }`,
    );
  const equation = EQUATIONS[visit.choices.hrmax_equation];
  const age: Ref = { name: "age", value: Math.floor(visit.ageYears), unit: "years" };
  book.compute("heart_rate_max_predicted", equation, [age], {
    note: `An average for this age, not this client's maximum. ${equation.caveat ?? ""}`.trim(),
    ...(equation.see === undefined
      ? {}
      : { error: { typical: equation.see, from: "standard error of the equation, as published" } }),
  });
  const slowing = visit.client.medication?.find((drug) => LOWERING.includes(drug));
  book.compute(
    "heart_rate_percent_predicted",
    sharePercent,
    ["heart_rate_peak", "heart_rate_max_predicted"],
    slowing === undefined
      ? {}
      : {
          note: `The client takes a medicine that slows the heart (${slowing}); the prediction does not allow for it.`,
        },
  );
}

/** A heart rate that was lost before the end hides its peak: half a test's highest value is no peak. */
function reachesEnd(test: Prepared, span: PhaseSpan): boolean {
  const { breaths: b, intervalS } = test;
  for (let i = b.n - 1; i >= 0; i--) {
    const t = b.time[i] as number;
    if (b.excluded[i] === 1 || t > span.toS + 1e-9 || Number.isNaN(b.heartRate[i] as number)) continue;
    return span.toS - t <= Math.max(20, 5 * intervalS);
  }
  return false;
}

/** Peak power, speed and grade: by stages with credit for the last one, in a ramp the load at the end. */
export function writeLoads(book: Notebook, visit: Visit, test: Prepared, stages: Stages | undefined): void {
  const span = incrementalSpan(test);
  if (span === undefined || stages === undefined) return;
  const b = test.breaths;
  const names = [
    ["power_peak", "power"],
    ["speed_peak", "speed"],
    ["grade_peak", "grade"],
  ] as const;
  for (const [id, channel] of names) {
    const loadAt = (from: number, to: number) => {
      let load = Number.NaN;
      for (let i = 0; i < b.n; i++) {
        const t = b.time[i] as number;
        if (b.excluded[i] === 1 || !(t > from && t <= to + 1e-9)) continue;
        const x = b[channel][i] as number;
        if (!Number.isNaN(x)) load = x;
      }
      return load;
    };
    const last = stages.all.at(-1);
    const before = stages.all.at(-2);
    const end = loadAt(span.fromS, span.toS);
    if (Number.isNaN(end) || (channel !== "grade" && end === 0)) continue;
    const lower = before === undefined ? Number.NaN : loadAt(before.fromS, before.toS);
    const broken = stages.kind === "typed" && last?.complete === false;
    const stepped = (stages.kind === "step" || broken) && last !== undefined && !Number.isNaN(lower) && lower !== end;
    const unknown = broken && (!test.timed || endUnknown(visit)); // no credit for a time that nobody wrote down
    const seconds = !stepped ? stages.lengthS : unknown ? 0 : last.toS - last.fromS;
    const ref = (name: string, value: number, unit: string): Ref => ({
      name,
      value: roundTo(value, 2),
      unit,
    });
    const unit = { power: "W", speed: "km/h", grade: "%" }[channel];
    book.compute(
      id,
      peakLoad,
      [
        ref("last complete load", stepped ? lower : end, unit),
        ref("last load", end, unit),
        ref("time in the last stage", seconds, "s"),
        ref("stage length", stages.lengthS, "s"),
      ],
      stages.kind === "ramp" ? { note: "The load at the end of the ramp." } : {},
    );
  }
}

export function writeConduct(book: Notebook, visit: Visit): void {
  const block = visit.session.incremental;
  if (block === undefined) return;
  if (block.stop === undefined) book.withhold("stop_reason", "why the test ended was not recorded");
  else book.judge("stop_reason", block.stop.reason, block.stop.detail ?? "As recorded by the practitioner.");
  const signs = block.adverse_signs;
  if (signs === undefined) book.withhold("adverse_signs", "whether there were signs or symptoms was not recorded");
  else if (signs.length === 0)
    book.judge("adverse_signs", "none seen", "The practitioner looked for signs and symptoms and recorded none.");
  else
    book.judge(
      "adverse_signs",
      signs.join(", "),
      block.adverse_detail ?? "Recorded by the practitioner during or after the test.",
    );
}
