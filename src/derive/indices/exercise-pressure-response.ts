/**
 * Response of blood pressure to exercise, against published limits.
 *
 *     above 250 systolic or 115 diastolic     at which a test is stopped
 *     last systolic more than 10 below rest   a fall although work rose
 *     210 (men), 190 (women) systolic or more the limit usually named for an exaggerated rise
 *
 * In this order. A class of the limit, never a diagnosis.
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

export type PressureResponse =
  | "within the limits"
  | "in the upper range"
  | "fell below rest"
  | "above the limit for stopping";
const ORDER: readonly PressureResponse[] = [
  "within the limits",
  "in the upper range",
  "fell below rest",
  "above the limit for stopping",
];
export const STOP_SYSTOLIC = 250;
export const STOP_DIASTOLIC = 115;
export const FALL = 10;
export const EXAGGERATED = { male: 210, female: 190 } as const;

export interface ExercisePressures {
  /** mmHg, all */
  readonly rest: number | undefined;
  readonly highest: number;
  readonly last: number;
  readonly diastolic: number | undefined;
  readonly sex: "female" | "male";
}

/** mmHg in, class out. Throws OutOfRange for systolic pressures outside 50 to 320. */
export function exercisePressureResponse(p: ExercisePressures): PressureResponse {
  requireRange(info.id, "highest systolic pressure", p.highest, 50, 320, "mmHg");
  if (p.highest > STOP_SYSTOLIC || (p.diastolic !== undefined && p.diastolic > STOP_DIASTOLIC))
    return "above the limit for stopping";
  if (p.rest !== undefined && p.last < p.rest - FALL) return "fell below rest";
  return p.highest >= EXAGGERATED[p.sex] ? "in the upper range" : "within the limits";
}

const base: ExercisePressures = { rest: 120, highest: 180, last: 180, diastolic: 85, sex: "female" };
const from = "American Heart Association list of reasons to stop";
export const info: FormulaInfo<[ExercisePressures], PressureResponse> = {
  id: "exercise-pressure-response",
  revision: 1,
  title: "Response of blood pressure to exercise",
  equation: "above 250/115 · more than 10 below rest · 210 (men) or 190 (women) and above",
  inputs: { pressures: { unit: "mmHg", range: "systolic 50 to 320" }, sex: { unit: "", range: "female, male" } },
  output: { unit: "class", decimals: 0 },
  caveat: "The limits of 210 and 190 are from memory, to be checked against the source.",
  source: {
    authors: "American Heart Association; Glaab T, Taube C",
    year: 2022,
    title: "Exercise standards; Practical guide to cardiopulmonary exercise testing in adults",
    journal: "Respir Res 23:9",
    where: "limits for stopping 250/115 and a fall of more than 10 mmHg below rest (seen); 210 and 190 from memory",
    verified: "memory",
  },
  compute: exercisePressureResponse,
  checks: (
    [
      [{ highest: 204, last: 204 }, 1, "by hand: 204 in a woman is 190 or more and no reason to stop"],
      [{ highest: 204, last: 204, sex: "male" }, 0, "by hand: 204 in a man is below 210"],
      [{ highest: 250, last: 250 }, 1, `${from}: 250 is not above 250`],
      [{ highest: 251, last: 251 }, 3, `${from}: 251`],
      [{ diastolic: 116 }, 3, `${from}: diastolic 116`],
      [{ last: 110 }, 0, `${from}: 10 below rest is not more than 10`],
      [{ last: 109 }, 2, `${from}: 11 below rest`],
    ] as const
  ).map(([change, expect, text]) => ({
    given: [{ ...base, ...change }],
    pick: (out) => ORDER.indexOf(out),
    expect,
    tolerance: 0,
    from: text,
  })),
};
