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

/** From fifteen-second means after the first two minutes and, in the last third, not at all; undefined with fewer than six. */
export function costShare(findings: Findings): CostShare | undefined {
  const test = findings.visit.session.incremental;
  const massKg = findings.value("body_mass");
  const mode = test?.mode;
  if (massKg === undefined || test?.handrail === "held" || test?.handrail === "light") return undefined;
  if (mode !== "treadmill" && mode !== "cycle" && mode !== "arm-crank") return undefined;
  const bins = readRows(findings.entry("incremental_bins"));
  const rising = bins.filter((row) => row.phase === "incremental" && typeof row.time_s === "number");
  const time = (row: NumberRow | undefined) => row?.time_s as number;
  const [first, last] = [time(rising[0]), time(rising[rising.length - 1])];
  const shares = rising.flatMap((row): number[] => {
    const at = time(row);
    if (at - first < 120 || at > first + 0.67 * (last - first) || typeof row.vo2_l_min !== "number") return [];
    const before = rising.find((earlier) => Math.abs(time(earlier) - (at - LAG_S)) <= 8);
    const number = (key: string) => (typeof before?.[key] === "number" ? (before[key] as number) : undefined);
    const loads = { speed: number("speed_km_h"), grade: number("grade_pct"), power: number("power_w") };
    const given = Object.fromEntries(Object.entries(loads).filter(([, x]) => x !== undefined));
    const cost = metabolicCost({ mode, massKg, ...given });
    return cost === undefined ? [] : [(1000 * row.vo2_l_min) / massKg / cost];
  });
  return shares.length < 6 ? undefined : { share: median(shares), n: shares.length };
}
