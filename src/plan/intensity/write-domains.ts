/** The intensities as tables: numbers with their interval, words for a day without a watch, and walking by grade and load. */

import { OutOfRange } from "../../kernel/formula.js";
import type { LoadedWalk } from "../../kernel/generated/client.js";
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import { roundTo, toDecimals } from "../../kernel/rounding.js";
import { numberOf, quantityOf } from "../recorded.js";
import { RATING, TALK } from "./anchors.js";
import type { Boundary, Limit } from "./boundaries.js";
import type { Domain, Intensities } from "./domains.js";
import { heartRateReserve, info as reserveInfo } from "./heart-rate-reserve.js";
import * as loaded from "./loaded-speed-for-uptake.js";
import * as power from "./power-for-uptake.js";
import * as running from "./running-speed-for-uptake.js";
import { info as separable } from "./separable-thresholds.js";
import { info as uptakeInfo } from "./uptake-reserve.js";
import * as walking from "./walking-speed-for-uptake.js";

export { heartRateReserve };

/** Kinds of training that a test on an ergometer stands for. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  treadmill: ["walk", "run"],
  cycle: ["cycle"],
  rowing: ["row"],
  skiing: ["ski"],
};

/** Heart rate at a threshold differs between kinds of exercise: said where the training is of another kind than the test. */
function otherMode(results: Results, modes: readonly string[]): string | undefined {
  const { mode } = results.conditions;
  const others = modes.filter((one) => mode !== undefined && !SAME[mode]?.includes(one));
  return mode === undefined || others.length === 0
    ? undefined
    : `The test was made on a ${mode === "cycle" ? "cycle ergometer" : mode}; in other kinds of training (${others.join(", ")}) heart rate and power lie differently, so breathing goes first there.`;
}

/** A load read while it rose stands too high for steady work: said beside the limits. */
function aheadOfUptake(results: Results): string | undefined {
  const rising = (["vt1_power", "vt2_power", "vt1_speed", "vt2_speed"] as const).some((id) =>
    quantityOf(results, id)?.note?.includes("uptake lags"),
  );
  return rising
    ? "Power and speed were read while work rose, ahead of uptake by half a minute to a minute: in steady work they stand somewhat too high, so heart rate and breathing go before them."
    : undefined;
}

export function writeDomains(
  book: Notebook,
  results: Results,
  intensities: Intensities,
  modes: readonly string[],
): void {
  const formula = { "uptake reserve": uptakeInfo, "heart-rate reserve": reserveInfo, "predicted maximum": reserveInfo };
  const info = formula[intensities.basis as keyof typeof formula] ?? separable;
  book.judge(
    "intensity_basis",
    intensities.basis,
    [intensities.because, intensities.heartRateOff, aheadOfUptake(results), otherMode(results, modes)]
      .filter((text) => text !== undefined)
      .join(" "),
    { rule: `${info.id} r${info.revision}` },
  );
  const columns: Column[] = [
    { key: "domain", title: "Effort" },
    { key: "heart_rate_from", title: "Heart rate from", unit: "1/min", decimals: 0 },
    { key: "heart_rate_to", title: "Heart rate to", unit: "1/min", decimals: 0 },
    { key: "heart_rate_interval", title: "95 % interval of the limits", unit: "1/min" },
    { key: "power_from", title: "Power from", unit: "W", decimals: 0 },
    { key: "power_to", title: "Power to", unit: "W", decimals: 0 },
    { key: "work", title: "Speed, grade, pace" },
    { key: "uptake_from", title: "VO2 from", unit: "mL/kg/min", decimals: 1 },
    { key: "uptake_to", title: "VO2 to", unit: "mL/kg/min", decimals: 1 },
    { key: "exertion", title: "Exertion, 6 to 20" },
    { key: "talk", title: "Talk (common practice)" },
  ];
  const rows = intensities.domains.map((domain): Cell[] => [
    domain.word,
    domain.from?.heartRate?.value ?? null,
    domain.to?.heartRate?.value ?? null,
    intervalText(domain),
    domain.from?.power?.value ?? reckoned(domain.from, results, "power"),
    domain.to?.power?.value ?? reckoned(domain.to, results, "power"),
    workText(domain, results),
    domain.from?.uptake?.value ?? null,
    domain.to?.uptake?.value ?? null,
    exertion(domain),
    TALK[domain.word],
  ]);
  const used = columns.map((_, i) => rows.some((row) => row[i] !== null));
  book.table(
    "intensity_domains",
    columns.filter((_, i) => used[i]),
    rows.map((row) => row.filter((_, i) => used[i])),
    info,
    [{ name: "basis", value: intensities.basis, unit: "" }],
    "The limits are soft: each stands within its interval, and moves with heat, altitude, fatigue and illness. Where breathing and number disagree, breathing goes first.",
  );
}

const beats = (limit: Limit | undefined): string | null =>
  limit?.low === undefined || limit.high === undefined
    ? null
    : `${toDecimals(limit.low, 0)} to ${toDecimals(limit.high, 0)}`;

function intervalText(domain: Domain): string | null {
  const from = beats(domain.from?.heartRate);
  const to = beats(domain.to?.heartRate);
  if (from === null && to === null) return null;
  return [from === null ? "" : `lower ${from}`, to === null ? "" : `upper ${to}`]
    .filter((text) => text !== "")
    .join("; ");
}

/** Power from uptake by the cycling equation, for a basis that has uptake only and a cycle test. */
function reckoned(boundary: Boundary | undefined, results: Results, kind: "power"): number | null {
  const mass = numberOf(results, "body_mass");
  const onCycle = results.conditions.mode?.includes("cycle") ?? false;
  if (kind !== "power" || !onCycle || mass === undefined || boundary?.uptake === undefined) return null;
  return tried(() => power.powerForUptake(boundary.uptake?.value as number, mass)) ?? null;
}

export function tried(work: () => number): number | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

function workText(domain: Domain, results: Results): string | null {
  const at = (boundary: Boundary | undefined): string | undefined => {
    if (boundary === undefined) return undefined;
    const speed = boundary.speed?.value;
    if (speed !== undefined) return `${toDecimals(speed, 1)} km/h${gradeText(boundary)}${paceText(speed, boundary)}`;
    if (boundary.uptake === undefined || boundary.power || results.conditions.mode?.includes("cycle")) return undefined;
    const uptake = boundary.uptake.value;
    const run = tried(() => running.runningSpeedForUptake(uptake, 0));
    if (run !== undefined) return `run ${toDecimals(run, 1)} km/h (equation)`;
    const walk = tried(() => walking.walkingSpeedForUptake(uptake, 10));
    return walk === undefined ? undefined : `walk ${toDecimals(walk, 1)} km/h at 10 % (equation)`;
  };
  const [from, to] = [at(domain.from), at(domain.to)];
  if (from === undefined && to === undefined) return null;
  if (from === undefined) return `up to ${to}`;
  return to === undefined ? `from ${from}` : `from ${from} to ${to}`;
}

const gradeText = (boundary: Boundary): string =>
  boundary.grade === undefined || boundary.grade.value === 0 ? "" : ` at ${toDecimals(boundary.grade.value, 0)} %`;

/** Minutes and seconds a kilometre, for running speeds on a level or nearly so. */
function paceText(speed: number, boundary: Boundary): string {
  if (speed < 7 || (boundary.grade?.value ?? 0) > 2) return "";
  const seconds = Math.round(3600 / speed);
  return `, ${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")} min/km`;
}

/** The client's own rating at the thresholds where there is one, else the published classes. */
function exertion(domain: Domain): string {
  const [from, to] = [domain.from?.rating, domain.to?.rating];
  if (from === undefined && to === undefined) return RATING[domain.word];
  const text = (value: number) => toDecimals(value, 0);
  if (from === undefined) return `up to ${text(to as number)} (own)`;
  return to === undefined ? `from ${text(from)} (own)` : `${text(from)} to ${text(to)} (own)`;
}

const GRADES = [0, 5, 10, 15, 20] as const;

/** Speeds that cost the uptake of the upper limit of easy, by grade and load: for hills other than the treadmill's. */
export function writeEquivalents(
  book: Notebook,
  results: Results,
  intensities: Intensities,
  walk: LoadedWalk | undefined,
  terrain: number,
): void {
  const limit = intensities.domains.find((domain) => domain.word === "easy")?.to?.uptake;
  const mass = numberOf(results, "body_mass");
  if (limit === undefined || mass === undefined || (walk === undefined && results.conditions.mode !== "treadmill"))
    return;
  const load = walk?.load_kg ?? 0;
  const rows = GRADES.flatMap((grade): Cell[][] => {
    const bare = tried(() => walking.walkingSpeedForUptake(limit.value, grade));
    const carried =
      load > 0 ? tried(() => loaded.loadedSpeedForUptake(limit.value, mass, load, grade, terrain)) : undefined;
    if (bare === undefined && carried === undefined) return [];
    return [[grade, bare === undefined ? null : roundTo(bare, 1), carried === undefined ? null : roundTo(carried, 1)]];
  });
  if (rows.length === 0) return;
  book.table(
    "intensity_equivalents",
    [
      { key: "grade", title: "Grade", unit: "%", decimals: 0 },
      { key: "walk", title: "Walking without a load", unit: "km/h", decimals: 1 },
      ...(load > 0 ? [{ key: "loaded", title: `Walking with ${load} kg`, unit: "km/h", decimals: 1 }] : []),
    ],
    rows.map((row) => (load > 0 ? row : row.slice(0, 2))),
    load > 0 ? loaded.info : walking.info,
    [
      { name: "uptake at the upper limit of easy", value: limit.value, unit: "mL/kg/min" },
      { name: "body mass", value: mass, unit: "kg" },
      ...(load > 0 ? [{ name: "terrain factor", value: terrain, unit: "" }] : []),
    ],
    "From equations, about 7 % off for one person and low for long carries; an empty cell lies outside the equation. On the hill, heart rate and breathing go first.",
  );
}
