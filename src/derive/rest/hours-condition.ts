/**
 * Whether the hours since food, caffeine, alcohol, nicotine or exercise meet the limit of an edition of the conditions
 * before a resting measurement.
 *
 *     met when hours ≥ limit (7 h of fast in the review of 2015, 5 h in the instructions of 2006, …)
 */
import { type FormulaInfo, requireRange } from "../../kernel/formula.js";

export type Edition = "evidence-review-2015" | "practitioner-instructions-2006";
export type HoursOf = "food" | "caffeine" | "alcohol" | "nicotine" | "exercise" | "hard exercise";

/** Least hours. Where the review of 2015 gives none, the number of 2006 stands; nicotine in 2015 acts longer than 140 min. */
export const LEAST_HOURS: Readonly<Record<Edition, Readonly<Record<HoursOf, number>>>> = {
  "evidence-review-2015": { food: 7, caffeine: 4, alcohol: 2, nicotine: 140 / 60, exercise: 12, "hard exercise": 24 },
  "practitioner-instructions-2006": { food: 5, caffeine: 4, alcohol: 2, nicotine: 2, exercise: 2, "hard exercise": 24 },
};

/** Hours in, whether the condition is met out. Throws OutOfRange for negative hours. */
export function hoursCondition(of: HoursOf, hours: number, edition: Edition): boolean {
  requireRange(info.id, "hours", hours, 0, 100_000, "h");
  return hours >= LEAST_HOURS[edition][of];
}

export const info: FormulaInfo<[HoursOf, number, Edition], boolean> = {
  id: "hours-condition",
  revision: 1,
  title: "Conditions before a resting measurement",
  equation: "hours ≥ limit of the edition",
  inputs: {
    of: { unit: "", range: "food, caffeine, alcohol, nicotine, exercise, hard exercise" },
    hours: { unit: "h", range: "0 and above" },
    edition: { unit: "", range: "evidence-review-2015, practitioner-instructions-2006" },
  },
  output: { unit: "met or not", decimals: 0 },
  source: {
    authors: "Fullmer S, Benson-Davies S, Earthman CP, Frankenfield DC, Gradwell E, Lee PSP, Piemonte T, Trabulsi J",
    year: 2015,
    title:
      "Evidence Analysis Library review of best practices for performing indirect calorimetry in healthy and non-critically ill individuals",
    journal: "J Acad Nutr Diet 115(9):1417–1446",
    doi: "10.1016/j.jand.2015.04.003",
    where: "abstract and recommendation pages of 2006 and 2014",
    verified: "seen",
  },
  compute: hoursCondition,
  checks: (
    [
      ["food", 6, "evidence-review-2015", 0],
      ["food", 7, "evidence-review-2015", 1],
      ["food", 6, "practitioner-instructions-2006", 1],
      ["caffeine", 3.9, "evidence-review-2015", 0],
      ["nicotine", 2, "evidence-review-2015", 0],
      ["nicotine", 2, "practitioner-instructions-2006", 1],
    ] as const
  ).map(([of, hours, edition, expect]) => ({
    given: [of, hours, edition],
    pick: (met) => Number(met),
    expect,
    tolerance: 0,
    from: `limits of ${edition}: ${hours} h since ${of}`,
  })),
};
