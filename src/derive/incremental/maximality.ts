/** May the peak be called a maximum? Only a plateau or a confirming bout says so; the other signs are shown beside it. */
import type { Notebook } from "../../kernel/notebook.js";
import { toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { type Effort, effortCriteria, info } from "./effort-criteria.js";

const LOWERING = ["beta blocker", "calcium-channel blocker", "other heart-rate lowering"];

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
    info,
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

export function judgeMaximality(book: Notebook, visit: Visit): void {
  const because = book.entry("vo2_peak");
  if (because?.kind === "not given") {
    book.withhold("maximality", "peak oxygen uptake is not given");
    return;
  }
  const word = (id: "plateau" | "verification") => {
    const entry = book.entry(id);
    return entry?.kind === "judgement" ? entry.verdict : undefined;
  };
  const plateau = word("plateau");
  const bout = word("verification");
  const rule = { rule: "maximality r1" };
  if (visit.session.incremental?.stop?.reason === "planned") {
    book.judge("maximality", "VO2peak", "The test was ended by plan, before exhaustion: no maximum is claimed.", rule);
    return;
  }
  if (bout === "incremental test not maximal") {
    book.judge(
      "maximality",
      "VO2peak",
      "The verification bout took up more than the incremental test did, so no maximum is claimed; the higher value is reported.",
      rule,
    );
    return;
  }
  if (bout === "confirmed") {
    book.judge("maximality", "VO2max", "A verification bout confirmed the peak of the incremental test.", rule);
    return;
  }
  if (plateau === "plateau") {
    book.judge("maximality", "VO2max", "Oxygen uptake levelled off while work still rose.", rule);
    return;
  }
  const why: Record<string, string> = {
    "no plateau": "oxygen uptake was still rising at the end",
    "cannot tell": "whether oxygen uptake levelled off cannot be told from these breaths",
  };
  const first = plateau === undefined ? "a plateau could not be looked for" : why[plateau];
  const second = bout === "not attained" ? "the verification bout fell short" : "no verification bout was made";
  book.judge(
    "maximality",
    "VO2peak",
    `This is the highest value seen, not proven to be the maximum: ${first}, and ${second}.`,
    rule,
  );
}
