/**
 * The open breath-by-breath tests of trained runners (Nolte, Rein and Quittmann 2023, CC-BY 4.0), read from outside
 * the repository; never copied into it.
 */
import { existsSync, readFileSync } from "node:fs";
import type { Series } from "../../../src/kernel/series.js";
import { seriesOf } from "./visit.js";

const folder = "../shared/data/ramp72";
export const present = existsSync(`${folder}/tests.csv`);

export interface Runner {
  readonly test: number;
  readonly massKg: number;
  readonly restS: number;
  readonly warmUpS: number;
  readonly loadS: number;
  readonly recoveryS: number;
}

const table = (path: string) => {
  const [head = "", ...rows] = readFileSync(path, "utf8").trim().split(/\r?\n/);
  const names = head.split(",");
  return rows.map((row) => Object.fromEntries(row.split(",").map((cell, i) => [names[i] ?? "", cell])));
};

export function runners(): Runner[] {
  return table(`${folder}/tests.csv`).map((row) => ({
    test: Number(row.test),
    massKg: Number(row.body_mass_kg),
    restS: Number(row.rest_start_s),
    warmUpS: Number(row.warmup_start_s),
    loadS: Number(row.load_start_s),
    recoveryS: Number(row.recovery_start_s),
  }));
}

export function ramp(test: number): Series {
  const rows = table(`${folder}/tests/${String(test).padStart(2, "0")}.csv`);
  const column = (name: string) => rows.map((row) => Number(row[name]));
  const seconds = rows.map((row) => Number(row.t_exp_s) + Number(row.t_insp_s));
  return seriesOf({
    time_s: column("time_s"),
    vo2_l_min: column("vo2_L_min"),
    vco2_l_min: column("vco2_L_min"),
    ventilation_l_min: column("vol_exp_L").map((litres, i) => (60 * litres) / (seconds[i] as number)),
    breathing_frequency_per_min: seconds.map((s) => 60 / s),
    speed_km_h: column("speed_km_h"),
    grade_pct: column("grade_pct"),
  });
}
