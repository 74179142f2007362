/**
 * Gross oxygen cost of steady work by the metabolic equations of the American College of Sports Medicine.
 *
 *     walk    3.5 + 0.1·S + 1.8·S·G          S 50 to 100 m/min
 *     run     3.5 + 0.2·S + 0.9·S·G          S above 134 m/min
 *     cycle   7 + 10.8·W/M                   50 to 200 W
 *     arm     3.5 + 18·W/M                   25 to 125 W (range from memory)
 *
 * mL/kg/min; S in m/min, G as a fraction, W in watts, M in kg. Bushman BA 2020, ACSM's Health & Fitness Journal
 * 24(3):6–10, Box 1 (seen). For checks only: an individual differs from them by several per cent.
 */
export interface Work {
  readonly mode: "treadmill" | "cycle" | "arm-crank";
  /** km/h and % */
  readonly speed?: number;
  readonly grade?: number;
  readonly power?: number;
  readonly massKg: number;
}

/** mL/kg/min, or undefined where the equations do not reach (other speeds, downhill, other powers). */
export function metabolicCost(work: Work): number | undefined {
  if (work.mode === "treadmill") {
    const { speed, grade = 0 } = work;
    if (speed === undefined || grade < 0) return undefined;
    const [s, g] = [(speed * 1000) / 60, grade / 100];
    if (s >= 50 && s <= 100) return 3.5 + 0.1 * s + 1.8 * s * g;
    return s > 134 ? 3.5 + 0.2 * s + 0.9 * s * g : undefined;
  }
  const { power, massKg } = work;
  if (power === undefined) return undefined;
  if (work.mode === "cycle") return power >= 50 && power <= 200 ? 7 + (10.8 * power) / massKg : undefined;
  return power >= 25 && power <= 125 ? 3.5 + (18 * power) / massKg : undefined;
}
