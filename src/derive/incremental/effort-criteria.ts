/**
 * Signs of a maximal effort by age. A table to read, never a vote: none of them, nor all together, makes a peak a
 * maximum, for each is met by many who could have gone on and missed by many who could not.
 */
import type { FormulaInfo } from "../../kernel/formula.js";
import { OutOfRange } from "../../kernel/formula.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";

/** Limits that nine of ten people with a plateau exceed. */
const BY_AGE: readonly {
  readonly from: number;
  readonly to: number;
  readonly rer: number;
  readonly of210: number;
  readonly of208: number;
}[] = [
  { from: 20, to: 39, rer: 1.13, of210: 96, of208: 93 },
  { from: 40, to: 59, rer: 1.1, of210: 99, of208: 92 },
  { from: 60, to: 69, rer: 1.06, of210: 99, of208: 89 },
];

/** Completed years in; limits of RER, % of 210 − age and % of 208 − 0.7 · age out. */
export function effortLimits(ageYears: number) {
  const years = Math.floor(ageYears);
  const row = BY_AGE.find((r) => years >= r.from && years <= r.to);
  if (row === undefined) throw new OutOfRange(info.id, "age", years, "20 to 69 years");
  return row;
}

export const info: FormulaInfo<[number], ReturnType<typeof effortLimits>> = {
  id: "effort-criteria",
  revision: 1,
  title: "Signs of a maximal effort by age",
  equation: "limits of RER and of heart rate as a share of 210 − age and of 208 − 0.7 · age, by age group",
  inputs: { age: { unit: "years", range: "20 to 69" } },
  output: { unit: "", decimals: 2 },
  caveat: "From cycling; heart-rate limits mean nothing on heart-rate lowering medication.",
  source: {
    authors: "Wagner J, Niemeyer M, Infanger D, et al.",
    year: 2020,
    title: "New data-based cutoffs for maximal exercise criteria across the lifespan",
    journal: "Med Sci Sports Exerc 52(9):1915–1923",
    doi: "10.1249/MSS.0000000000002344",
    where: "abstract: limits by age group from 526 people, of whom 32 % had a plateau",
    verified: "seen",
  },
  compute: effortLimits,
  checks: [
    {
      given: [45],
      expect: 1.1,
      tolerance: 0,
      pick: (row) => row.rer,
      from: "Wagner 2020, abstract: RER 1.10 from 40 to 59 years",
    },
    {
      given: [39.9],
      expect: 93,
      tolerance: 0,
      pick: (row) => row.of208,
      from: "Wagner 2020, abstract: 93 % from 20 to 39 years",
    },
    { given: [72], expect: "refused", from: "the source's limits end at 69 years" },
  ],
};

export type Outcome = "met" | "not met" | "not measurable";
export interface Criterion {
  readonly name: string;
  readonly found: string;
  readonly limit: string;
  readonly outcome: Outcome;
  readonly source: string;
}
export interface Effort {
  readonly ageYears: number;
  readonly rer: number | undefined;
  readonly heartRate: number | undefined;
  /** A drug that lowers heart rate, in the client's record. */
  readonly heartRateLowered: boolean;
  readonly rpe: { readonly value: number; readonly scale: "6-20" | "0-10" } | undefined;
  /** mmol/L after the test. */
  readonly lactate: number | undefined;
}

const WAGNER = "Wagner 2020";
const HOWLEY = "Howley 1995, from memory";

export function effortCriteria(e: Effort): Criterion[] {
  const row = BY_AGE.find((r) => Math.floor(e.ageYears) >= r.from && Math.floor(e.ageYears) <= r.to);
  const line = (
    name: string,
    value: number | undefined,
    limit: number | undefined,
    decimals: number,
    unit: string,
    source: string,
    why = "not recorded",
  ): Criterion => {
    const text = (x: number) => `${toDecimals(x, decimals)} ${unit}`.trim();
    const asked = limit === undefined ? "the source covers 20 to 69 years" : `≥ ${text(limit)}`;
    if (value === undefined) return { name, found: why, limit: asked, outcome: "not measurable", source };
    if (limit === undefined) return { name, found: text(value), limit: asked, outcome: "not measurable", source };
    const met = compareAtDecimals(value, limit, decimals) >= 0;
    return { name, found: text(value), limit: asked, outcome: met ? "met" : "not met", source };
  };
  const heart = (full: number) =>
    e.heartRate === undefined || e.heartRateLowered ? undefined : (100 * e.heartRate) / full;
  const lowered = e.heartRateLowered ? "heart rate is lowered by medication" : "not recorded";
  const ten = e.rpe?.scale === "0-10";
  return [
    line("Respiratory exchange ratio", e.rer, row?.rer, 2, "", WAGNER),
    line("Heart rate of 210 − age", heart(210 - e.ageYears), row?.of210, 0, "%", WAGNER, lowered),
    line("Heart rate of 208 − 0.7 · age", heart(208 - 0.7 * e.ageYears), row?.of208, 0, "%", WAGNER, lowered),
    line(`Perceived exertion (${ten ? "0-10" : "6-20"})`, e.rpe?.value, ten ? 8 : 17, 0, "", HOWLEY),
    line("Blood lactate", e.lactate, 8, 1, "mmol/L", HOWLEY),
  ];
}
