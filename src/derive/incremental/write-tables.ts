/** Tables of a test: phases, stages, fifteen-second means, what was recorded and what was left out. */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { hasValues } from "../columns.js";
import { describeDead } from "./dead-channel.js";
import { info as OUTLIER } from "./local-outlier.js";
import { BIN_COLUMNS, binRows, STAGE_COLUMNS, stageRows } from "./means.js";
import { info as PHASES } from "./phase-minutes.js";
import type { PhaseSpan } from "./phases.js";
import type { Prepared } from "./prepare.js";

import { info as MEANS } from "./sample-means.js";
import { CHANNEL_TITLES, CHANNEL_UNITS } from "./samples.js";
import { type Stages, stagesOf } from "./stages.js";

const fileRef = (visit: Visit): Ref => ({
  name: "from",
  value: visit.session.incremental?.series ?? `${visit.file} incremental`,
  unit: "",
});

export const incrementalSpan = (test: Prepared): PhaseSpan | undefined =>
  test.phases.find((span) => span.phase === "incremental");

/** A typed stage that was broken off without saying when. */
export function endUnknown(visit: Visit): boolean {
  const block = visit.session.incremental;
  const last = block?.series === undefined && block?.bags === undefined ? block?.stages?.at(-1) : undefined;
  return last?.completed === false && last.end_s === undefined;
}

export function writePhases(book: Notebook, visit: Visit, test: Prepared): void {
  const origin = { "session file": "as stated", workload: "detected: confirm", none: "not known" }[test.phasesFrom];
  book.table(
    "incremental_phases",
    [
      { key: "phase", title: "Phase" },
      { key: "from_s", title: "From", unit: "s", decimals: 0 },
      { key: "to_s", title: "To", unit: "s", decimals: 0 },
      { key: "origin", title: "Known from" },
    ],
    test.phases.map((s) => [s.phase, test.timed ? s.fromS : null, test.timed ? s.toS : null, origin]),
    PHASES,
    [fileRef(visit)],
    test.notes.length > 0 ? `${test.notes.join("; ")}.` : undefined,
  );
  const span = incrementalSpan(test);
  if (span === undefined || !test.timed) book.withhold("test_duration", "the samples have no times");
  else if (endUnknown(visit))
    book.withhold("test_duration", "the last stage was not completed, and when it ended (end_s) is not stated");
  else if (test.phasesFrom === "none") book.withhold("test_duration", "the phases of the test are not known");
  else {
    const minutes = (span.toS - span.fromS) / 60;
    book.found("test_duration", minutes, PHASES, [fileRef(visit)], {
      note: "8 to 12 min is the usual advice; 5 to 26 min on a treadmill and 7 to 26 min on a cycle gave valid peaks (Midgley 2008).",
    });
  }
}

export function writeStages(book: Notebook, visit: Visit, test: Prepared): Stages | undefined {
  const span = incrementalSpan(test);
  if (span === undefined) return undefined;
  const protocol = visit.session.incremental?.protocol;
  const typed = visit.session.incremental?.stages;
  const stages = stagesOf(test, span, protocol, typed?.at(-1)?.completed !== false);
  const lastS = protocol?.stage_mean_s ?? 30;
  const mass = book.value("body_mass");
  const inputs: Ref[] = [fileRef(visit), { name: "last part of a stage", value: lastS, unit: "s" }];
  const kind = { step: "", ramp: "A ramp has no stages: one row a minute. ", typed: "" }[stages.kind];
  book.table(
    "incremental_stages",
    STAGE_COLUMNS,
    stageRows(test, stages, test.phases, lastS, mass),
    MEANS,
    inputs,
    `${kind}${stages.kind === "typed" ? "Each row as recorded." : `Means over the last ${lastS} s of each row.`}`,
  );
  if (test.timed && test.intervalS <= 15)
    book.table("incremental_bins", BIN_COLUMNS, binRows(test), MEANS, [
      fileRef(visit),
      { name: "block", value: 15, unit: "s" },
    ]);
  return stages;
}

export function writeData(book: Notebook, visit: Visit, test: Prepared): void {
  const b = test.breaths;
  const rows: Cell[][] = [];
  const row = (what: string, found: string) => rows.push([what, found]);
  row("level", test.level);
  row("samples", `${b.n}${test.timed ? `, usually ${toDecimals(test.intervalS, 1)} s apart` : ""}`);
  for (const name of ["vo2", "vco2", "ve", "heartRate"] as const) {
    if (!hasValues(b[name])) {
      row(CHANNEL_TITLES[name], "not recorded");
      continue;
    }
    let missing = 0;
    for (let i = 0; i < b.n; i++) if (Number.isNaN(b[name][i] as number)) missing++;
    row(CHANNEL_TITLES[name], missing === 0 ? "every sample" : `missing in ${missing} of ${b.n} samples`);
  }
  for (const run of test.dead) row("lost channel", describeDead(run));
  const longest = test.gaps.reduce((most, gap) => Math.max(most, gap.toS - gap.fromS), 0);
  row("gaps", test.gaps.length === 0 ? "none" : `${test.gaps.length}, the longest ${toDecimals(longest, 1)} s`);
  const breaths = new Set(test.excluded.map((e) => e.index)).size;
  row("left out of means", test.excluded.length === 0 ? "none" : `${breaths} of ${b.n} samples, listed one by one`);
  book.table(
    "incremental_data",
    [
      { key: "what", title: "What" },
      { key: "found", title: "Found" },
    ],
    rows,
    PHASES,
    [fileRef(visit)],
  );
  if (test.excluded.length === 0) return;
  book.table(
    "incremental_excluded",
    [
      { key: "line", title: "Line of the file", decimals: 0 },
      { key: "time_s", title: "Time", unit: "s", decimals: 1 },
      { key: "rule", title: "Rule" },
      { key: "channel", title: "Channel" },
      { key: "found", title: "Found" },
    ],
    excludedRows(test),
    OUTLIER,
    [fileRef(visit)],
    "Left out of every mean and fit, kept in the file. A rule about one gas leaves out the whole breath; one about heart rate only that value.",
  );
}

/** One row a sample and rule; channels that failed together stand together. */
function excludedRows(test: Prepared): Cell[][] {
  const b = test.breaths;
  const rows: Cell[][] = [];
  test.excluded.forEach((e, k) => {
    const channel = e.channel === "all" ? "whole sample" : CHANNEL_TITLES[e.channel];
    const unit = e.channel === "all" ? "s" : CHANNEL_UNITS[e.channel];
    const found = Number.isNaN(e.found) ? "no time" : `${toDecimals(e.found, 2)} ${unit}`.trimEnd();
    const before = test.excluded[k - 1];
    const last = rows.at(-1);
    if (last !== undefined && before?.index === e.index && before.rule === e.rule) {
      last[3] = `${last[3]}, ${channel}`;
      last[4] = `${last[4]}, ${found}`;
      return;
    }
    const t = b.time[e.index] as number;
    rows.push([b.line[e.index] || null, Number.isNaN(t) ? null : t, e.rule, channel, found]);
  });
  return rows;
}
