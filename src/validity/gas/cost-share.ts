/** Measured uptake as a share of what the metabolic equations expect for the work, over the middle of a test. */
import type { Findings } from "../../kernel/rule.js";
import { median } from "../../kernel/statistics.js";
import { type NumberRow, readRows } from "../read-rows.js";
import { metabolicCost } from "./metabolic-cost.js";

/** Uptake lags behind work: it is held against the work of 45 s before. */
const LAG_S = 45;

export interface CostShare {
  /** Median of measured over expected. */
  readonly share: number;
  readonly n: number;
}

/**
 * From steady stages where there are two or more; else from fifteen-second means after the first two minutes and before
 * the last third of the incremental phase, six or more. Undefined where the equations do not reach or rails were held.
 */
export function costShare(findings: Findings): CostShare | undefined {
  const test = findings.visit.session.incremental;
  const massKg = findings.value("body_mass");
  const mode = test?.mode;
  if (massKg === undefined || test?.handrail === "held" || test?.handrail === "light") return undefined;
  if (mode !== "treadmill" && mode !== "cycle" && mode !== "arm-crank") return undefined;
  const steady = readRows(findings.entry("economy_stages")).flatMap((row): number[] => {
    if (row.because !== null || typeof row.vo2_l_min !== "number") return [];
    const cost = metabolicCost({ mode, massKg, ...loadsOf(row) });
    return cost === undefined ? [] : [(1000 * row.vo2_l_min) / massKg / cost];
  });
  if (steady.length >= 2) return { share: median(steady), n: steady.length };
  const bins = readRows(findings.entry("incremental_bins"));
  const rising = bins.filter((row) => row.phase === "incremental" && typeof row.time_s === "number");
  const time = (row: NumberRow | undefined) => row?.time_s as number;
  const [first, last] = [time(rising[0]), time(rising[rising.length - 1])];
  const shares = rising.flatMap((row): number[] => {
    const at = time(row);
    if (at - first < 120 || at > first + 0.67 * (last - first) || typeof row.vo2_l_min !== "number") return [];
    const before = rising.find((earlier) => Math.abs(time(earlier) - (at - LAG_S)) <= 8);
    const cost = before === undefined ? undefined : metabolicCost({ mode, massKg, ...loadsOf(before) });
    return cost === undefined ? [] : [(1000 * row.vo2_l_min) / massKg / cost];
  });
  return shares.length < 6 ? undefined : { share: median(shares), n: shares.length };
}

function loadsOf(row: NumberRow): { readonly speed?: number; readonly grade?: number; readonly power?: number } {
  const [speed, grade, power] = [row.speed_km_h, row.grade_pct, row.power_w];
  return {
    ...(typeof speed === "number" ? { speed } : {}),
    ...(typeof grade === "number" ? { grade } : {}),
    ...(typeof power === "number" ? { power } : {}),
  };
}
