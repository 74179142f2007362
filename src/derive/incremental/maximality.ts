/** May the peak be called a maximum? Only a plateau or a confirming bout says so; the other signs are shown beside it. */
import type { FormulaInfo } from "../../kernel/formula.js";
import type { Notebook } from "../../kernel/notebook.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { type Effort, effortCriteria, info as signs } from "./effort-criteria.js";

export const LOWERING: readonly string[] = ["beta blocker", "calcium-channel blocker", "other heart-rate lowering"];

export function writeCriteria(book: Notebook, visit: Visit, rer: number | undefined): void {
  const block = visit.session.incremental;
  const asked = block?.rpe_at_end;
  const effort: Effort = {
    ageYears: visit.ageYears,
    rer,
    heartRate: book.value("heart_rate_peak"),
    heartRateLowered: (visit.client.medication ?? []).some((drug) => LOWERING.includes(drug)),
    rpe: asked?.overall === undefined ? undefined : { value: asked.overall, scale: asked.scale },
    lactate: highestLactate(visit),
  };
  book.table(
    "maximality_criteria",
    [
      { key: "criterion", title: "Sign" },
      { key: "found", title: "Found" },
      { key: "limit", title: "Limit" },
      { key: "outcome", title: "Outcome" },
      { key: "source", title: "Source" },
    ],
    effortCriteria(effort).map((c) => [c.name, c.found, c.limit, c.outcome, c.source]),
    signs,
    [
      ...(rer === undefined
        ? []
        : [{ name: "RER of the incremental peak", value: Number(toDecimals(rer, 2)), unit: "" }]),
      "heart_rate_peak",
      { name: "age", value: Math.floor(visit.ageYears), unit: "years" },
    ],
    "None of these, nor all together, makes a peak a maximum. They are shown for your judgement and are never counted up.",
  );
}

function highestLactate(visit: Visit): number | undefined {
  const steps = visit.session.lactate?.steps ?? [];
  const values = steps.map((step) => step.lactate_mmol_l).filter((x): x is number => typeof x === "number");
  return values.length === 0 ? undefined : Math.max(...values);
}

export interface Claim {
  readonly verdict: "VO2max" | "VO2peak";
  readonly because: string;
}

/** Verdict words of the judgements `plateau` and `verification` in, undefined where there is none. */
/** Exchange ratio of the incremental peak below which a levelling is not believed: this project's rule. */
const LEAST_RATIO = 1;

export function maximality(
  plateau: string | undefined,
  bout: string | undefined,
  planned: boolean,
  rer?: number,
): Claim {
  const peak = (because: string): Claim => ({ verdict: "VO2peak", because });
  if (planned) return peak("The test was ended by plan, before exhaustion: no maximum is claimed.");
  if (bout === "incremental test not maximal")
    return peak(
      "The verification bout took up more than the incremental test did, so no maximum is claimed; the higher value is reported.",
    );
  const proven = bout === "confirmed" || plateau === "plateau";
  if (proven && rer !== undefined && compareAtDecimals(rer, LEAST_RATIO, 2) < 0)
    return peak(
      `Oxygen uptake ${bout === "confirmed" ? "agreed between the test and its verification bout" : "levelled off"}, but at an exchange ratio of ${toDecimals(rer, 2)}: below ${toDecimals(LEAST_RATIO, 2)} the work was far from the limit, so no maximum is claimed.`,
    );
  if (bout === "confirmed")
    return { verdict: "VO2max", because: "A verification bout confirmed the peak of the incremental test." };
  if (plateau === "plateau") return { verdict: "VO2max", because: "Oxygen uptake levelled off while work still rose." };
  const why: Readonly<Record<string, string>> = {
    "no plateau": "oxygen uptake was still rising at the end",
    "cannot tell": "whether oxygen uptake levelled off cannot be told from these breaths",
  };
  const first = (plateau === undefined ? undefined : why[plateau]) ?? "a plateau could not be looked for";
  const second = bout === "not attained" ? "the verification bout fell short" : "no verification bout was made";
  return peak(`This is the highest value seen, not proven to be the maximum: ${first}, and ${second}.`);
}

export function judgeMaximality(book: Notebook, visit: Visit, rer: number | undefined): void {
  if (book.entry("vo2_peak")?.kind === "not given") {
    book.withhold("maximality", "peak oxygen uptake is not given");
    return;
  }
  const word = (id: "plateau" | "verification") => {
    const entry = book.entry(id);
    return entry?.kind === "judgement" ? entry.verdict : undefined;
  };
  const plateau = word("plateau");
  const bout = word("verification");
  const claim = maximality(plateau, bout, visit.session.incremental?.stop?.reason === "planned", rer);
  book.judge("maximality", claim.verdict, claim.because, {
    rule: `${info.id} r${info.revision}`,
    inputs: [
      { name: "plateau", text: plateau ?? "not looked for", ...(plateau === undefined ? {} : { measure: "plateau" }) },
      { name: "verification", text: bout ?? "none", ...(bout === undefined ? {} : { measure: "verification" }) },
      ...(rer === undefined ? [] : [{ name: "RER of the incremental peak", text: toDecimals(rer, 2) }]),
    ],
  });
}

export const info: FormulaInfo<[string | undefined, string | undefined, boolean, number?], Claim> = {
  id: "maximality",
  revision: 2,
  title: "Maximum or peak",
  equation:
    "VO2max with a plateau or a confirming verification bout, at an exchange ratio of 1.00 or more, else VO2peak",
  inputs: {
    plateau: { unit: "", range: "plateau, no plateau, cannot tell" },
    verification: { unit: "", range: "confirmed, incremental test not maximal, not attained" },
    "ended by plan": { unit: "", range: "true or false" },
    RER: { unit: "ratio", range: "of the incremental peak; where it is known" },
  },
  output: { unit: "", decimals: 0 },
  caveat: "Secondary signs (exchange ratio, heart rate, lactate, exertion) never make a peak a maximum.",
  source: {
    authors: "Poole DC, Wilkerson DP, Jones AM",
    year: 2008,
    title: "Validity of criteria for establishing maximal O2 uptake during ramp exercise tests",
    journal: "Eur J Appl Physiol 102:403–410",
    doi: "10.1007/s00421-007-0596-3",
    where: "secondary criteria accept tests far below the maximum; the order of the two proofs is this project's",
    verified: "memory",
  },
  compute: maximality,
  checks: [
    {
      given: ["plateau", undefined, false, 0.95],
      expect: 0,
      tolerance: 0,
      pick: (claim) => (claim.verdict === "VO2max" ? 1 : 0),
      from: "by reason: at an exchange ratio below 1 a levelling is chance or pacing",
    },
    {
      given: ["plateau", undefined, false, 1],
      expect: 1,
      tolerance: 0,
      pick: (claim) => (claim.verdict === "VO2max" ? 1 : 0),
      from: "by reason: 1.00 itself is no objection",
    },
    {
      given: ["no plateau", undefined, false],
      expect: 0,
      tolerance: 0,
      pick: (claim) => (claim.verdict === "VO2max" ? 1 : 0),
      from: "Poole 2008: without plateau or verification it is VO2peak, whatever the secondary criteria",
    },
    {
      given: ["no plateau", "confirmed", false],
      expect: 1,
      tolerance: 0,
      pick: (claim) => (claim.verdict === "VO2max" ? 1 : 0),
      from: "Costa 2021: a bout that agrees within 3 % confirms",
    },
    {
      given: ["plateau", "incremental test not maximal", false],
      expect: 0,
      tolerance: 0,
      pick: (claim) => (claim.verdict === "VO2max" ? 1 : 0),
      from: "by reason: a bout that took up more disproves the peak",
    },
  ],
};
