/**
 * Resting blood pressure from its readings, by the rule of the scheme.
 *
 *     acc-aha-2017        mean of all readings
 *     esh-2023, esc-2024  three or more readings: mean of the last two; otherwise mean of all
 *
 * The first reading is usually the highest, because a cuff alarms; European rules therefore drop it once there are
 * three. Only one arm counts: that with more readings, and of two equals the higher. Seated readings count; where
 * none was seated, those in the posture of the first.
 */
import { type FormulaInfo, OutOfRange } from "../../kernel/formula.js";
import { mean } from "../../kernel/statistics.js";

export interface Reading {
  readonly systolic: number;
  readonly diastolic: number;
  readonly pulse?: number | undefined;
  readonly arm?: "left" | "right" | undefined;
  readonly posture?: "seated" | "supine" | "standing" | undefined;
}
export type Scheme = "acc-aha-2017" | "esh-2023" | "esc-2024";
export interface RestingPressure {
  readonly systolic: number;
  readonly diastolic: number;
  /** Mean pulse of the readings that count; absent where one of them has none. */
  readonly pulse?: number;
  /** Indices of the readings that count. */
  readonly used: readonly number[];
  /** Mean systolic of the higher arm less that of the other, where both were measured. */
  readonly armDifference?: number;
  readonly posture?: "seated" | "supine" | "standing";
}

/** Readings in order, mmHg, to the resting pressure, mmHg. Throws OutOfRange without a reading or with one that cannot be. */
export function restingAverage(readings: readonly Reading[], scheme: Scheme): RestingPressure {
  const [first] = readings;
  if (first === undefined) throw new OutOfRange(info.id, "readings", 0, "one or more readings");
  for (const { systolic, diastolic } of readings)
    if (!(diastolic >= 20 && systolic <= 300 && diastolic < systolic))
      throw new OutOfRange(
        info.id,
        "reading",
        `${systolic}/${diastolic} mmHg`,
        "diastolic from 20 mmHg, below systolic",
      );
  const posture = readings.some((r) => r.posture === "seated") ? "seated" : first.posture;
  const eligible = readings.map((r, index) => ({ ...r, index })).filter((r) => r.posture === posture);
  const counted = (arm: Reading["arm"]) => {
    const own = eligible.filter((r) => r.arm === arm);
    return scheme === "acc-aha-2017" || own.length < 3 ? own : own.slice(-2);
  };
  const arms = [...new Set(eligible.map((r) => r.arm))].map((arm) => ({
    all: eligible.filter((r) => r.arm === arm).length,
    used: counted(arm),
    systolic: mean(counted(arm).map((r) => r.systolic)),
  }));
  arms.sort((a, b) => b.all - a.all || b.systolic - a.systolic);
  const [chosen, other] = arms;
  if (chosen === undefined) throw new OutOfRange(info.id, "readings", 0, "one or more readings");
  const pulses = chosen.used.flatMap((r) => (r.pulse === undefined ? [] : [r.pulse]));
  return {
    systolic: chosen.systolic,
    diastolic: mean(chosen.used.map((r) => r.diastolic)),
    ...(pulses.length === chosen.used.length ? { pulse: mean(pulses) } : {}),
    used: chosen.used.map((r) => r.index),
    ...(other === undefined ? {} : { armDifference: Math.abs(chosen.systolic - other.systolic) }),
    ...(posture === undefined ? {} : { posture }),
  };
}

const three: readonly Reading[] = [
  { systolic: 150, diastolic: 95 },
  { systolic: 140, diastolic: 90 },
  { systolic: 136, diastolic: 86 },
];
export const info: FormulaInfo<[readonly Reading[], Scheme], RestingPressure> = {
  id: "resting-average",
  revision: 1,
  title: "Resting blood pressure from its readings",
  equation: "mean of the last two of three or more (esh-2023, esc-2024) or of all readings (acc-aha-2017)",
  inputs: {
    readings: { unit: "mmHg", range: "systolic to 300, diastolic from 20 and below systolic" },
    scheme: { unit: "", range: "acc-aha-2017, esh-2023 or esc-2024" },
  },
  output: { unit: "mmHg", decimals: 0 },
  caveat: "One visit is not a diagnosis.",
  source: {
    authors: "McEvoy JW, McCarthy CP, Bruno RM, et al.; Whelton PK, Carey RM, Aronow WS, et al.",
    year: 2024,
    title: "2024 ESC Guidelines for elevated blood pressure and hypertension; 2017 ACC/AHA guideline",
    journal: "Eur Heart J 45(38):3912–4018; Hypertension 71(6):e13–e115",
    doi: "10.1093/eurheartj/ehae178",
    where: "measurement sections",
    verified: "memory",
  },
  compute: restingAverage,
  checks: [
    {
      given: [three, "esc-2024"],
      expect: 138,
      tolerance: 0,
      pick: (p) => p.systolic,
      from: "by hand: the first of three is dropped; (140 + 136) / 2",
    },
    {
      given: [three, "acc-aha-2017"],
      expect: 142,
      tolerance: 1e-9,
      pick: (p) => p.systolic,
      from: "by hand: (150 + 140 + 136) / 3",
    },
    {
      given: [three.slice(0, 2), "esh-2023"],
      expect: 92.5,
      tolerance: 0,
      pick: (p) => p.diastolic,
      from: "by hand: two readings both count; (95 + 90) / 2",
    },
    {
      given: [[{ systolic: 120, diastolic: 0 }], "esh-2023"],
      expect: "refused",
      from: "a diastolic of 0 was not found",
    },
    { given: [[], "esh-2023"], expect: "refused", from: "no reading" },
  ],
};
