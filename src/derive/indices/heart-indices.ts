/** Heart-rate indices of the incremental test: chronotropic index, recovery, and the course of the oxygen pulse. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import { mean } from "../../kernel/statistics.js";
import type { Visit } from "../../kernel/visit.js";
import { foundOrWithheld } from "../found-or-withheld.js";
import * as pulse from "../incremental/oxygen-pulse.js";
import * as chronotropic from "./chronotropic-index.js";
import * as recovery from "./heart-rate-recovery.js";
import { numbersOf, type Row, readTable } from "./read-table.js";

export function heartIndices(book: Notebook, visit: Visit, bins: readonly Row[]): void {
  chronotropicResponse(book, visit);
  recoveries(book, visit);
  course(book, bins);
}

/** Exchange ratio below which a test was not carried to the limit: as for the references of peak uptake (own rule). */
const LEAST_RATIO = 1;

/** A medicine that slows the heart, in words, or undefined. */
function slowingMedicine(visit: Visit): string | undefined {
  return visit.client.medication?.find(
    (m) => m === "beta blocker" || m === "other heart-rate lowering" || m === "calcium-channel blocker",
  );
}

function chronotropicResponse(book: Notebook, visit: Visit): void {
  const id = "chronotropic_index";
  const peak = book.value("heart_rate_peak");
  const predicted = book.value("heart_rate_max_predicted");
  const [standing = []] = numbersOf(phase(book, "rest"), "heart_rate_bpm");
  const lying = book.value("resting_heart_rate") ?? book.value("resting_pulse");
  const rest = lying ?? (standing.length > 0 ? mean(standing) : undefined);
  if (peak === undefined || predicted === undefined || rest === undefined) {
    const absent = [
      peak === undefined && "peak",
      rest === undefined && "resting",
      predicted === undefined && "predicted maximal",
    ].filter(Boolean);
    book.withhold(id, `${absent.join(" and ")} heart rate ${absent.length === 1 ? "is" : "are"} not given`);
    return;
  }
  const ratio = book.value("rer_peak");
  if (ratio !== undefined && compareAtDecimals(ratio, LEAST_RATIO, 2) < 0) {
    book.withhold(
      id,
      `it holds after a maximal effort only, and the exchange ratio at the peak was ${toDecimals(ratio, 2)}, below ${toDecimals(LEAST_RATIO, 2)}`,
    );
    return;
  }
  const medicine = slowingMedicine(visit);
  const inputs: Ref[] = [
    "heart_rate_peak",
    book.value("resting_heart_rate") !== undefined
      ? "resting_heart_rate"
      : lying !== undefined
        ? "resting_pulse"
        : { name: "heart rate before the test", value: Math.round(rest), unit: "1/min" },
    "heart_rate_max_predicted",
  ];
  const note = `only after a maximal effort${medicine === undefined ? "" : `; the client takes a medicine that slows the heart (${medicine})`}`;
  foundOrWithheld(book, id, chronotropic.info, inputs, () => chronotropic.chronotropicIndex(peak, rest, predicted), {
    note,
  });
}

/** A typed heart rate this far from the series' own is said. */
const FAR = 5;

function recoveries(book: Notebook, visit: Visit): void {
  const stated = visit.session.incremental?.recovery;
  const start = readTable(book, "incremental_phases")
    .find((row) => row.text("phase") === "recovery")
    ?.number("from_s");
  const peak = highestBefore(book, start);
  const posture = `posture: ${stated?.posture ?? "not recorded: the fall cannot be compared without it"}`;
  for (const minutes of [1, 2] as const) {
    const id: MeasureId = `heart_rate_recovery_${minutes}_min`;
    const typed = stated?.[`heart_rate_${minutes}_min_bpm`];
    const seen = start === undefined ? undefined : around(book, start + 60 * minutes);
    const after = seen ?? typed;
    if (peak === undefined || after === undefined) {
      const because =
        peak === undefined
          ? "peak heart rate is not given"
          : `heart rate ${minutes} min after stopping was not recorded`;
      book.withhold(id, because);
      continue;
    }
    const inputs: Ref[] = [
      peak.ref,
      { name: `heart rate after ${minutes} min`, value: Math.round(after), unit: "1/min" },
    ];
    const apart = seen !== undefined && typed !== undefined && Math.abs(seen - typed) > FAR;
    foundOrWithheld(book, id, recovery.info, inputs, () => recovery.heartRateRecovery(peak.rate, after), {
      note: apart
        ? `${posture}; read from the series, where it is ${Math.round(seen)} per minute: the session says ${typed}`
        : posture,
    });
  }
}

/**
 * The heart rate that a recovery starting at `startS` falls from: the highest one, unless that was reached later, in a
 * verification bout; then the highest fifteen-second mean of the incremental phase.
 */
function highestBefore(book: Notebook, startS: number | undefined): { rate: number; ref: Ref } | undefined {
  const entry = book.entry("heart_rate_peak");
  if (entry?.kind !== "quantity") return undefined;
  const own = { rate: entry.value, ref: "heart_rate_peak" as const };
  if (startS === undefined || entry.origin.kind !== "formula") return own;
  const from = Number.parseFloat(entry.origin.inputs.find((input) => input.name === "from")?.text ?? "");
  if (!(from > startS)) return own;
  const [rates = []] = numbersOf(phase(book, "incremental"), "heart_rate_bpm");
  if (rates.length === 0) return undefined;
  const rate = Math.max(...rates);
  return {
    rate,
    ref: { name: "highest 15-s mean of the incremental phase", value: Math.round(rate), unit: "1/min" },
  };
}

/** Mean of the recovery's fifteen-second means within 8 s of a time, or undefined. */
function around(book: Notebook, timeS: number): number | undefined {
  const near = phase(book, "recovery").filter((row) => Math.abs((row.number("time_s") ?? Number.NaN) - timeS) <= 8);
  const [rates = []] = numbersOf(near, "heart_rate_bpm");
  return rates.length === 0 ? undefined : mean(rates);
}

const phase = (book: Notebook, name: string) =>
  readTable(book, "incremental_bins").filter((row) => row.text("phase") === name);

const COURSE: readonly Column[] = [
  { key: "share_pct", title: "Share of the incremental phase", unit: "%", decimals: 0 },
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
  { key: "oxygen_pulse_ml", title: "Oxygen pulse", unit: "mL/beat", decimals: 1 },
];

/** Oxygen pulse in ten equal parts of the incremental phase. */
function course(book: Notebook, bins: readonly Row[]): void {
  const [vo2 = [], heart = []] = numbersOf(bins, "vo2_l_min", "heart_rate_bpm");
  if (vo2.length < 10) {
    book.withhold("oxygen_pulse_course", "fewer than ten fifteen-second means hold uptake and heart rate");
    return;
  }
  const rows = Array.from({ length: 10 }, (_, part): Cell[] => {
    const cut = (xs: readonly number[]) =>
      mean(xs.slice(Math.floor((part * xs.length) / 10), Math.floor(((part + 1) * xs.length) / 10)));
    const [o2, hr] = [cut(vo2), cut(heart)];
    return [10 * (part + 1), o2, hr, (1000 * o2) / hr];
  });
  book.table("oxygen_pulse_course", COURSE, rows, pulse.info, [{ name: "parts", value: 10, unit: "" }]);
}
