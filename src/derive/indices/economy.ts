/** Economy of running or cycling, speed at VO2max, and fuel use, from steady stages. */
import type { Cell, Column } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { mean } from "../../kernel/statistics.js";
import { lPerMin } from "../../kernel/unit.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt, foundOrWithheld } from "../found-or-withheld.js";
import { frayn1983, info as fraynInfo } from "../rest/frayn-1983.js";
import { info as jeukendrupInfo, jeukendrupWallis2005 } from "../rest/jeukendrup-wallis-2005.js";
import { info as peronnetInfo, peronnetMassicotte1991 } from "../rest/peronnet-massicotte-1991.js";
import * as cycling from "./cycling-economy.js";
import * as energy from "./energy-cost-of-running.js";
import * as fatmax from "./fatmax.js";
import * as cost from "./oxygen-cost-of-running.js";
import { writeSpeedAtVo2max } from "./speed-definitions.js";
import { SHORTEST_S, info as steadyInfo } from "./steady-stage.js";
import { type SteadyStage, steadyStages } from "./steady-stages.js";

const STAGES: readonly Column[] = [
  { key: "stage", title: "Stage" },
  { key: "length_s", title: "Length", unit: "s", decimals: 0 },
  { key: "power_w", title: "Power", unit: "W", decimals: 0 },
  { key: "speed_km_h", title: "Speed", unit: "km/h", decimals: 1 },
  { key: "grade_pct", title: "Grade", unit: "%", decimals: 1 },
  { key: "vo2_l_min", title: "VO2", unit: "L/min", decimals: 2 },
  { key: "rer", title: "RER", decimals: 2 },
  { key: "cost_ml_kg_km", title: "Oxygen cost", unit: "mL/kg/km", decimals: 0 },
  { key: "economy_w_per_l", title: "Cycling economy", unit: "W per L/min", decimals: 1 },
  { key: "because", title: "Not used because" },
];
const ECONOMY_S = 240;

export function economy(book: Notebook, visit: Visit): void {
  const every = steadyStages(book, visit);
  const stages = every.filter((s) => s.lengthS >= SHORTEST_S - 1);
  const steady = stages.filter((s) => s.because === undefined);
  const byStage =
    visit.choices.vvo2max_definition === "completed-stage" || visit.choices.vvo2max_definition === "pro-rata";
  if (every.some((s) => (s.speed ?? 0) >= 6) && (stages.length > 0 || byStage)) writeSpeedAtVo2max(book, visit, steady);
  if (stages.length === 0) return; // a ramp is not a test of economy
  const mass = book.value("body_mass");
  const perMass = (s: SteadyStage) => (mass === undefined ? undefined : (1000 * s.vo2) / mass);
  const rows = stages.map((s): Cell[] => {
    const uptake = perMass(s);
    const running =
      s.speed !== undefined && uptake !== undefined
        ? attempt(() => cost.oxygenCostOfRunning(uptake, s.speed as number))
        : undefined;
    const riding = s.power !== undefined ? attempt(() => cycling.cyclingEconomy(s.power as number, s.vo2)) : undefined;
    const number = (o: typeof running) => (o !== undefined && o.because === undefined ? o.value : null);
    const used = s.because === undefined;
    return [
      s.name,
      s.lengthS,
      s.power ?? null,
      s.speed ?? null,
      s.grade ?? null,
      s.vo2,
      s.vco2 / s.vo2,
      used ? number(running) : null,
      used ? number(riding) : null,
      s.because ?? null,
    ];
  });
  book.table("economy_stages", STAGES, rows, steadyInfo, [{ name: "mean over the last", value: 120, unit: "s" }]);
  const long = steady.filter((s) => s.lengthS >= ECONOMY_S - 1);
  if (long.length === 0) {
    const because = `no complete stage of ${ECONOMY_S / 60} min or more is steady (RER below 1.00, below the second threshold)`;
    const running =
      visit.session.incremental?.mode === "treadmill" || stages.some((s) => s.speed !== undefined && s.speed > 0);
    book.withhold(running ? "oxygen_cost_of_running" : "cycling_economy", because);
  } else if (long.some((s) => s.power !== undefined && s.power > 0)) writeCycling(book, long);
  else writeRunning(book, long, mass);
  fuels(book, visit, steady);
}

function writeCycling(book: Notebook, steady: readonly SteadyStage[]): void {
  const values = steady.flatMap((s) => {
    const outcome = attempt(() => cycling.cyclingEconomy(s.power ?? 0, s.vo2));
    return outcome.because === undefined ? [outcome.value] : [];
  });
  const inputs: Ref[] = [{ name: "steady stages", value: values.length, unit: "" }];
  if (values.length === 0) book.withhold("cycling_economy", "no steady stage has 30 W or more");
  else
    book.found("cycling_economy", mean(values), cycling.info, inputs, {
      note: `mean of ${steady.map((s) => `${s.power?.toFixed(0)} W`).join(", ")}`,
    });
}

function writeRunning(book: Notebook, steady: readonly SteadyStage[], mass: number | undefined): void {
  const ids = ["oxygen_cost_of_running", "energy_cost_of_running"] as const;
  if (mass === undefined) {
    for (const id of ids) book.withhold(id, "body mass was not measured");
    return;
  }
  const level = steady.filter((s) => (s.speed ?? 0) >= 6 && (s.grade ?? 0) <= 2);
  if (level.length === 0) {
    for (const id of ids) book.withhold(id, "no steady stage was run at 6 km/h or faster and at a grade up to 2 %");
    return;
  }
  const inputs: Ref[] = ["body_mass", { name: "steady stages", value: level.length, unit: "" }];
  const note = `mean of ${level.map((s) => `${s.speed?.toFixed(1)} km/h at ${(s.grade ?? 0).toFixed(1)} %`).join(", ")}`;
  const uptake = (s: SteadyStage) => (1000 * s.vo2) / mass;
  foundOrWithheld(
    book,
    ids[0],
    cost.info,
    inputs,
    () => mean(level.map((s) => cost.oxygenCostOfRunning(uptake(s), s.speed ?? 0))),
    { note },
  );
  foundOrWithheld(
    book,
    ids[1],
    energy.info,
    inputs,
    () => mean(level.map((s) => energy.energyCostOfRunning(uptake(s), s.vco2 / s.vo2, s.speed ?? 0))),
    { note },
  );
}

const FUELS: readonly Column[] = [
  { key: "stage", title: "Stage" },
  { key: "percent_of_peak", title: "Share of VO2peak", unit: "%", decimals: 0 },
  { key: "heart_rate_bpm", title: "Heart rate", unit: "1/min", decimals: 0 },
  { key: "rer", title: "RER", decimals: 2 },
  { key: "fat_g_min", title: "Fat", unit: "g/min", decimals: 2 },
  { key: "carbohydrate_g_min", title: "Carbohydrate", unit: "g/min", decimals: 2 },
  { key: "because", title: "Not given because" },
];

function fuels(book: Notebook, visit: Visit, steady: readonly SteadyStage[]): void {
  const id = visit.choices.substrate_equation;
  const peak = book.value("vo2_peak");
  const info = {
    "frayn-1983": fraynInfo,
    "peronnet-massicotte-1991": peronnetInfo,
    "jeukendrup-wallis-2005": jeukendrupInfo,
  }[id];
  const share = (s: SteadyStage) => (peak === undefined ? undefined : (100 * s.vo2) / peak);
  const oxidation = (s: SteadyStage) =>
    attempt(() => {
      const [o2, co2] = [lPerMin(s.vo2), lPerMin(s.vco2)];
      if (id === "frayn-1983") return frayn1983(o2, co2);
      return id === "peronnet-massicotte-1991"
        ? peronnetMassicotte1991(o2, co2)
        : jeukendrupWallis2005(o2, co2, share(s) ?? Number.NaN);
    });
  const found = steady.map((s) => ({ stage: s, outcome: oxidation(s) }));
  const rows = found.map(({ stage: s, outcome }): Cell[] => {
    const head = [s.name, share(s) ?? null, s.heartRate ?? null, s.vco2 / s.vo2];
    return outcome.because === undefined
      ? [...head, outcome.value.fat, outcome.value.carbohydrate, null]
      : [...head, null, null, outcome.because];
  });
  const inputs: Ref[] = [{ name: "steady stages", value: steady.length, unit: "" }];
  const results = ["fat_oxidation_highest", "fatmax_percent_of_peak", "fatmax_heart_rate"] as const;
  if (rows.length > 0)
    book.table(
      "fat_oxidation_stages",
      FUELS,
      rows,
      info,
      inputs,
      "protein left out; food before the test changes these rates",
    );
  const given = found.flatMap(({ stage, outcome }) =>
    outcome.because === undefined ? [{ stage, fat: outcome.value.fat }] : [],
  );
  const best = attempt(() => fatmax.fatmax(given.map((g) => g.fat)));
  const top = best.because === undefined ? given[best.value] : undefined;
  if (top === undefined) {
    for (const result of results) book.withhold(result, best.because ?? "no steady stage");
    return;
  }
  book.found(results[0], top.fat, fatmax.info, inputs, { note: `stage ${top.stage.name}, by ${id}` });
  const percent = share(top.stage);
  if (percent === undefined) book.withhold(results[1], "peak oxygen uptake is not given");
  else book.found(results[1], percent, fatmax.info, ["vo2_peak", ...inputs]);
  if (top.stage.heartRate === undefined) book.withhold(results[2], "heart rate was not recorded in that stage");
  else book.found(results[2], top.stage.heartRate, fatmax.info, inputs);
}
