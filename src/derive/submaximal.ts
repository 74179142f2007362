/** Submaximal tests without gas analysis: peak uptake only ever as an estimate, with its standard error on it. */
import { OutOfRange } from "../kernel/formula.js";
import type { CycleStage, Submaximal } from "../kernel/generated/session.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { given, writeEstimate } from "./field/estimate.js";
import * as gellish from "./incremental/gellish-2007.js";
import * as nes from "./incremental/nes-2013.js";
import * as tanaka from "./incremental/tanaka-2001.js";
import * as extrapolation from "./submaximal/cycle-extrapolation.js";
import * as cyclePeak from "./submaximal/cycle-peak-friend.js";
import * as storerMen from "./submaximal/cycle-power-storer-men.js";
import * as storerWomen from "./submaximal/cycle-power-storer-women.js";
import * as astrand from "./submaximal/cycle-single-astrand.js";
import * as cycleStages from "./submaximal/cycle-stages.js";
import * as cycling from "./submaximal/oxygen-cost-cycling.js";
import * as running from "./submaximal/oxygen-cost-running.js";
import * as walking from "./submaximal/oxygen-cost-walking.js";
import * as jogGeorge from "./submaximal/treadmill-jog-george.js";
import * as jogVehrs from "./submaximal/treadmill-jog-vehrs.js";
import * as treadmillPeak from "./submaximal/treadmill-peak-friend.js";
import * as questionnaire from "./submaximal/treadmill-questionnaire-george.js";
import * as walk from "./submaximal/treadmill-walk-ebbeling.js";
import * as perMass from "./submaximal/uptake-over-mass.js";

const HRMAX = { "tanaka-2001": tanaka.info, "gellish-2007": gellish.info, "nes-2013": nes.info } as const;
type Key = (name: string) => string;

export function deriveSubmaximal(book: Notebook, visit: Visit): void {
  const block = visit.session.submaximal;
  if (block === undefined) return;
  const key = (name: string) => `${visit.file} submaximal.${name}`;
  const sex: Ref = { name: "sex", value: visit.client.sex, unit: "" };
  const slowed = slowedHeart(visit);
  if (block.cycle_stages !== undefined) tabulate(book, block.cycle_stages.stages);
  writeHeartRateTests(book, visit, block, key, sex, slowed);
  const rated = block.treadmill_questionnaire;
  if (rated !== undefined)
    writeEstimate(book, "vo2max_estimate_treadmill_questionnaire", questionnaire.info, [
      sex,
      "age",
      "body_mass",
      { name: key("treadmill_questionnaire.speed_km_h"), value: rated.speed_km_h, unit: "km/h" },
      { name: key("treadmill_questionnaire.functional_ability"), value: rated.functional_ability, unit: "points" },
      { name: key("treadmill_questionnaire.activity_rating"), value: rated.activity_rating, unit: "points" },
    ]);
  const peak = block.cycle_maximal_power;
  if (peak !== undefined) {
    const power: Ref = { name: key("cycle_maximal_power.power_w"), value: peak.power_w, unit: "W" };
    const formula = visit.client.sex === "male" ? storerMen.info : storerWomen.info;
    writeEstimate(book, "vo2max_estimate_cycle_power", formula, [power, "body_mass", "age"]);
    book.compute("vo2max_estimate_cycle_power_per_mass", perMass.info, ["vo2max_estimate_cycle_power", "body_mass"], {
      note: "An estimate, not a measurement.",
    });
    writeEstimate(book, "vo2max_estimate_cycle_peak", cyclePeak.info, [power, "body_mass"]);
  }
  const top = block.treadmill_peak;
  if (top !== undefined)
    writeEstimate(book, "vo2max_estimate_treadmill_peak", treadmillPeak.info, [
      { name: key("treadmill_peak.speed_km_h"), value: top.speed_km_h, unit: "km/h" },
      { name: key("treadmill_peak.grade_percent"), value: top.grade_percent, unit: "%" },
    ]);
}

/** Why heart rate cannot be used, or undefined where nothing speaks against it. */
function slowedHeart(visit: Visit): string | undefined {
  const slowing = ["beta blocker", "other heart-rate lowering"];
  const taken = visit.client.medication?.some((name) => slowing.includes(name)) ?? false;
  return visit.session.submaximal?.beta_blocker === true || taken
    ? "the client takes a medicine that slows the heart, and the estimate is made from heart rate"
    : undefined;
}

function writeHeartRateTests(
  book: Notebook,
  visit: Visit,
  block: Submaximal,
  key: Key,
  sex: Ref,
  slowed: string | undefined,
): void {
  const ref = (name: string, value: number, unit: string): Ref => ({ name: key(name), value, unit });
  const { treadmill_walk: walked, treadmill_jog: jogged, cycle_single: single, cycle_stages: stages } = block;
  const cost = { note: "An estimate for steady state, not a measurement." };
  const grade = (percent: number): Ref => ({ name: "grade of the protocol", value: percent, unit: "%" });
  if (walked !== undefined)
    book.compute(
      "treadmill_walk_uptake",
      walking.info,
      [ref("treadmill_walk.speed_km_h", walked.speed_km_h, "km/h"), grade(5)],
      cost,
    );
  if (jogged !== undefined)
    book.compute(
      "treadmill_jog_uptake",
      running.info,
      [ref("treadmill_jog.speed_km_h", jogged.speed_km_h, "km/h"), grade(0)],
      cost,
    );
  if (walked !== undefined && slowed === undefined)
    writeEstimate(book, "vo2max_estimate_treadmill_walk", walk.info, [
      sex,
      "age",
      ref("treadmill_walk.speed_km_h", walked.speed_km_h, "km/h"),
      ref("treadmill_walk.heart_rate_bpm", walked.heart_rate_bpm, "1/min"),
    ]);
  if (jogged !== undefined && slowed === undefined) {
    const speed = ref("treadmill_jog.speed_km_h", jogged.speed_km_h, "km/h");
    const pulse = ref("treadmill_jog.heart_rate_bpm", jogged.heart_rate_bpm, "1/min");
    if (visit.ageYears < 30)
      writeEstimate(book, "vo2max_estimate_treadmill_jog", jogGeorge.info, [sex, "age", "body_mass", speed, pulse]);
    else writeEstimate(book, "vo2max_estimate_treadmill_jog", jogVehrs.info, [sex, "age", "body_mass", speed, pulse]);
  }
  if (single !== undefined) {
    const power = ref("cycle_single.power_w", single.power_w, "W");
    book.compute("cycle_single_uptake", cycling.info, [power, "body_mass"], {
      note: "An estimate, not a measurement.",
    });
    const pulse = ref("cycle_single.heart_rate_bpm", single.heart_rate_bpm, "1/min");
    if (slowed === undefined)
      writeEstimate(book, "vo2max_estimate_cycle_single", astrand.info, [sex, "age", "cycle_single_uptake", pulse]);
  }
  if (stages !== undefined && slowed === undefined) writeStages(book, visit, stages.stages);
  if (slowed === undefined) return;
  if (walked !== undefined) book.withhold("vo2max_estimate_treadmill_walk", slowed);
  if (jogged !== undefined) book.withhold("vo2max_estimate_treadmill_jog", slowed);
  if (single !== undefined) book.withhold("vo2max_estimate_cycle_single", slowed);
  if (stages !== undefined) book.withhold("vo2max_estimate_cycle_stages", slowed);
}

function writeStages(book: Notebook, visit: Visit, stages: readonly CycleStage[]): void {
  const usable = stages.filter((stage) => stage.heart_rate_bpm >= 110 && stage.heart_rate_bpm <= 150);
  const [first, second] = usable.slice(-2);
  if (first === undefined || second === undefined) {
    book.withhold("vo2max_estimate_cycle_stages", "two stages with a heart rate from 110 to 150 /min are needed");
    return;
  }
  const maximal = HRMAX[visit.choices.hrmax_equation];
  const predicted = predictedMaximum(maximal, visit.ageYears);
  const limit = given(`maximal heart rate by ${maximal.id} r${maximal.revision}`, predicted, "1/min");
  if (limit === undefined) {
    book.withhold("vo2max_estimate_cycle_stages", `${maximal.title} does not cover this age`);
    return;
  }
  book.compute(
    "cycle_power_at_maximal_heart_rate",
    extrapolation.info,
    [
      { name: "first stage", value: first.power_w, unit: "W" },
      { name: "first heart rate", value: first.heart_rate_bpm, unit: "1/min" },
      { name: "second stage", value: second.power_w, unit: "W" },
      { name: "second heart rate", value: second.heart_rate_bpm, unit: "1/min" },
      limit,
    ],
    { note: "An extrapolation, not a measurement." },
  );
  writeEstimate(book, "vo2max_estimate_cycle_stages", cycleStages.info, [
    "cycle_power_at_maximal_heart_rate",
    "body_mass",
  ]);
}

function predictedMaximum(formula: (typeof HRMAX)[keyof typeof HRMAX], ageYears: number): number | undefined {
  try {
    return formula.compute(ageYears);
  } catch (error) {
    if (error instanceof OutOfRange) return undefined;
    throw error;
  }
}

function tabulate(book: Notebook, stages: readonly CycleStage[]): void {
  book.table(
    "submaximal_stages",
    [
      { key: "power", title: "Power", unit: "W", decimals: 0 },
      { key: "heart_rate", title: "Heart rate", unit: "1/min", decimals: 0 },
      { key: "rpe", title: "Perceived exertion", unit: "6-20", decimals: 0 },
      { key: "systolic", title: "Systolic", unit: "mmHg", decimals: 0 },
      { key: "diastolic", title: "Diastolic", unit: "mmHg", decimals: 0 },
    ],
    stages.map((s): Cell[] => [
      s.power_w,
      s.heart_rate_bpm,
      s.rpe ?? null,
      s.systolic_mmhg ?? null,
      s.diastolic_mmhg ?? null,
    ]),
    extrapolation.info,
    [],
  );
}
