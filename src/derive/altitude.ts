/**
 * Thin air: what the altitude of the goal means for this client's own peak uptake, and the ascent. Context for planning; clearance, prevention by drugs and diagnosis belong to a physician experienced in altitude medicine.
 */
import type { Notebook, Ref } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import * as ascent from "./altitude/ascent-schedule.js";
import * as inspired from "./altitude/inspired-oxygen-pressure.js";
import * as walk from "./altitude/loaded-walk.js";
import * as mountain from "./altitude/mountain-pressure.js";
import * as uptake from "./altitude/uptake-at-altitude.js";
import * as percentOf from "./arithmetic/percent-of.js";
import * as sharePercent from "./arithmetic/share-percent.js";

/** Below this altitude the section says nothing: no published group shows a loss. */
const LOWEST_M = 580;
/** Scatter of the published groups about the curve, in percent of the low-altitude peak. */
const SCATTER = 4.7;
/** Altitude above which the medical caution is printed. */
const CAUTION_M = 2500;

export function deriveAltitude(book: Notebook, visit: Visit): void {
  goalAltitude(book, visit);
  ascentNights(book, visit);
}

function goalAltitude(book: Notebook, visit: Visit): void {
  const goal = visit.client.goals?.find((g) => (g.altitude_m ?? 0) >= LOWEST_M);
  if (goal?.altitude_m === undefined) return;
  book.record("goal_altitude", goal.altitude_m, "client.yaml goals.altitude_m");
  book.compute("goal_pressure", mountain.info, ["goal_altitude"]);
  const air = Number(visit.choices.room_air.split("/")[0]);
  book.compute("goal_inspired_oxygen", inspired.info, [
    { name: "O2 fraction of dry air", value: air, unit: "" },
    "goal_pressure",
  ]);
  book.compute("goal_uptake_percent", uptake.info, ["goal_altitude"], {
    error: { typical: SCATTER, from: "scatter of 105 published groups; people scatter more" },
    note: "On arrival, not acclimatised. Staying does not bring peak uptake back.",
  });
  expectedUptake(book);
  taskOfGoal(book, visit);
  if (goal.altitude_m >= CAUTION_M)
    book.judge(
      "altitude_caution",
      "physician experienced in altitude medicine",
      "This section gives fitness and known physiology. Prevention by drugs, clearance and diagnosis belong to a physician experienced in altitude medicine. Never go higher with headache, loss of balance, confusion, breathlessness at rest or a wet cough: go down at once and get help.",
    );
}

function expectedUptake(book: Notebook): void {
  const here = book.value("vo2_peak_per_mass");
  book.compute("goal_uptake_per_mass", percentOf.info, ["vo2_peak_per_mass", "goal_uptake_percent"], {
    ...(here === undefined
      ? {}
      : { error: { typical: (here * SCATTER) / 100, from: "scatter of the published groups" } }),
    note: "an estimate from groups, not a measurement",
  });
  if (here === undefined) return;
  const altitudes = [580, 1000, 1500, 2000, 2500, 3000, 3500, 4000, 4500, 5000, 5500, 5720];
  book.table(
    "altitude_curve",
    [
      { key: "altitude", title: "Altitude", unit: "m", decimals: 0 },
      { key: "uptake", title: "Expected peak uptake", unit: "mL/kg/min", decimals: 1 },
      { key: "low", title: "Low (group scatter, 2 SD)", unit: "mL/kg/min", decimals: 1 },
      { key: "high", title: "High (2 SD, up to the value measured here)", unit: "mL/kg/min", decimals: 1 },
    ],
    altitudes.map((m) => {
      const share = uptake.uptakeAtAltitude(m);
      const scatter = 2 * SCATTER;
      return [m, (here * share) / 100, (here * (share - scatter)) / 100, (here * Math.min(100, share + scatter)) / 100];
    }),
    uptake.info,
    ["vo2_peak_per_mass"],
  );
}

function taskOfGoal(book: Notebook, visit: Visit): void {
  const task = visit.client.plan?.walk;
  if (task === undefined) return;
  const terrain = task.terrain ?? "road";
  book.compute(
    "task_demand",
    walk.info,
    [
      "body_mass",
      { name: "load", value: task.load_kg ?? 0, unit: "kg" },
      { name: "speed", value: task.speed_km_h, unit: "km/h" },
      { name: "grade", value: task.grade_pct ?? 0, unit: "%" },
      { name: `terrain factor (${terrain})`, value: walk.TERRAIN[terrain], unit: "" },
    ],
    { note: "an estimate from an equation, not a measurement" },
  );
  book.compute("task_share", sharePercent.info, ["task_demand", "goal_uptake_per_mass"]);
}

function ascentNights(book: Notebook, visit: Visit): void {
  const itinerary = visit.client.plan?.itinerary;
  if (itinerary === undefined) return;
  const nights = ascent.ascentSchedule(itinerary.start_m, itinerary.nights_m);
  const inputs: readonly Ref[] = [
    { name: "start", value: itinerary.start_m, unit: "m" },
    { name: "nights", value: itinerary.nights_m.join(" "), unit: "m" },
  ];
  book.table(
    "ascent_schedule",
    [
      { key: "night", title: "Night", decimals: 0 },
      { key: "altitude", title: "Sleeping altitude", unit: "m", decimals: 0 },
      { key: "gain", title: "Gain", unit: "m", decimals: 0 },
      { key: "flags", title: "Beyond published limits" },
    ],
    nights.map((n) => [n.night, n.altitudeM, n.gainM, n.flags.join("; ") || "none"]),
    ascent.info,
    inputs,
  );
  const flagged = nights.filter((n) => n.flags.length > 0);
  const illness = itinerary.earlier_altitude_illness ?? "not asked";
  const history =
    illness === "none or mild" ? "" : ` Earlier altitude illness: ${illness}; this belongs before a physician.`;
  book.judge(
    "ascent_judgement",
    flagged.length === 0 ? "inside the published limits" : "beyond a published limit",
    (flagged.length === 0
      ? "No night gains more than 500 m above 2750 m, and there is a night without gain for every 1000 m. That lowers the risk of altitude illness; it does not remove it."
      : `Night ${flagged.map((n) => `${n.night} (${n.flags.join("; ")})`).join(", night ")}.`) + history,
    { rule: "ascent-schedule r1" },
  );
}
