/** Resting values from a raw series: minute means, the steady window, and means over it. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { mean } from "../../kernel/statistics.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt } from "../found-or-withheld.js";
import { respiratoryExchangeRatio } from "../gas/respiratory-exchange-ratio.js";
import { holdsBags, restFromBags } from "./from-bags.js";
import { minuteMeans } from "./minute-means.js";
import { restingChannels } from "./resting-channels.js";
import { type SteadyWindow, steadyWindow, info as windowInfo } from "./steady-window.js";
import * as tidal from "./tidal-volume.js";

/** In the order of the channels; uptake and output arrive in L/min and are written in mL/min. */
const VALUES = [
  "resting_vo2",
  "resting_vco2",
  "resting_ventilation",
  "resting_breathing_frequency",
  "resting_heart_rate",
] as const satisfies readonly MeasureId[];
const ML = [1000, 1000, 1, 1, 1];
const ALL = [...VALUES, "resting_tidal_volume", "resting_rer"] as const;

const TRACE: readonly Column[] = [
  { key: "minute", title: "Minute", decimals: 0 },
  { key: "vo2_ml_min", title: "VO2", unit: "mL/min", decimals: 0 },
  { key: "vco2_ml_min", title: "VCO2", unit: "mL/min", decimals: 0 },
  { key: "rer", title: "RER", decimals: 2 },
  { key: "ventilation_l_min", title: "Ventilation (BTPS)", unit: "L/min", decimals: 1 },
  { key: "breathing_frequency_per_min", title: "Breathing frequency", unit: "1/min", decimals: 1 },
  { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
  { key: "part", title: "Part" },
];
const WINDOW: readonly Column[] = [
  { key: "from_min", title: "From minute", unit: "min", decimals: 0 },
  { key: "to_min", title: "To minute", unit: "min", decimals: 0 },
  { key: "from_s", title: "From", unit: "s", decimals: 0 },
  { key: "to_s", title: "To", unit: "s", decimals: 0 },
  { key: "cv_vo2_pct", title: "Variation of VO2", unit: "%", decimals: 1 },
  { key: "cv_vco2_pct", title: "Variation of VCO2", unit: "%", decimals: 1 },
];

type Row = readonly (number | null)[];

/** Writes rest_trace, rest_window and the window's values, or why there are none. */
export function restFromSeries(book: Notebook, visit: Visit, file: string): void {
  const rest = visit.session.rest;
  const series = visit.series[file];
  if (series !== undefined && holdsBags(series)) {
    restFromBags(book, visit, series);
    return;
  }
  const channels = series === undefined ? { because: `${file} could not be read` } : restingChannels(visit, series);
  if (channels.because !== undefined) {
    withholdAll(book, ["rest_trace", "rest_window", ...ALL], channels.because);
    return;
  }
  const { time } = channels;
  const last = time[time.length - 1] ?? 0;
  const from = rest?.from_s ?? 0;
  const to = Math.min(rest?.to_s ?? last, last);
  const means = minuteMeans(time, channels.list, from, to);
  const [vo2, vco2, ve, bf, hr] = means.channels as readonly [Row, Row, Row, Row, Row];

  const { rest_settling_min: settling, rest_window_min: length, rest_window_rule: rule } = visit.choices;
  const found = attempt(() => steadyWindow(vo2, vco2, settling, length, rule));
  const window = found.because === undefined ? found.value : undefined;
  const inputs: Ref[] = [
    { name: "series", value: file, unit: "" },
    { name: "settling", value: settling, unit: "min" },
    { name: "window", value: length, unit: "min" },
    { name: "rule", value: rule, unit: "" },
  ];

  const rows = means.start.map((_, m): Cell[] => {
    const [o2, co2] = [vo2[m] ?? null, vco2[m] ?? null];
    const ratio = o2 === null || co2 === null ? null : respiratoryExchangeRatio(co2, o2);
    return [
      m + 1,
      millilitres(o2),
      millilitres(co2),
      ratio,
      ve[m] ?? null,
      bf[m] ?? null,
      hr[m] ?? null,
      part(m, settling, window),
    ];
  });
  if (rows.length === 0) book.withhold("rest_trace", `${file} holds less than one minute of rest`);
  else book.table("rest_trace", TRACE, rows, windowInfo, inputs, leftOut(channels.leftOut));

  if (window === undefined) {
    withholdAll(book, ["rest_window", ...ALL], found.because ?? "");
    return;
  }
  const edges = [
    window.from,
    window.from + window.length,
    from + 60 * window.from,
    from + 60 * (window.from + window.length),
  ];
  book.table("rest_window", WINDOW, [[...edges, window.cvVo2, window.cvVco2]], windowInfo, inputs);
  VALUES.forEach((id, i) => {
    const row = means.channels[i]?.slice(window.from, window.from + window.length) ?? [];
    const present = row.filter((x) => x !== null);
    if (present.length < window.length)
      book.withhold(id, channels.missing[i] ?? `it is missing in part of the steady window`);
    else book.found(id, mean(present) * (ML[i] as number), windowInfo, inputs);
  });
  book.compute("resting_tidal_volume", tidal.info, ["resting_ventilation", "resting_breathing_frequency"]);
}

/** Names the breaths that were left out, so that nobody has to guess. */
function leftOut(lines: readonly number[]): string | undefined {
  if (lines.length === 0) return undefined;
  return lines.length === 1
    ? `1 breath left out of the means as a cough, swallow or sigh (line ${lines[0]})`
    : `${lines.length} breaths left out of the means as coughs, swallows or sighs (lines ${lines.join(", ")})`;
}

const millilitres = (litres: number | null) => (litres === null ? null : 1000 * litres);

function part(minute: number, settling: number, window: SteadyWindow | undefined): string {
  if (minute < settling) return "settling";
  return window !== undefined && minute >= window.from && minute < window.from + window.length ? "window" : "not used";
}

function withholdAll(book: Notebook, ids: readonly MeasureId[], because: string): void {
  for (const id of ids) book.withhold(id, because);
}
