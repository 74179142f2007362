/** Strength and power. Where no sound norm exists the value says so, and is for following the client's own change. */

import type { Jump, MidThighPull, StepUp, Strength } from "../kernel/generated/session.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { listOf } from "../kernel/readings.js";
import type { Visit } from "../kernel/visit.js";
import { judgedFrom } from "./judged-from.js";
import * as bestOf from "./strength/best-trial.js";
import * as flight from "./strength/jump-height-flight-time.js";
import * as harmanMean from "./strength/jump-mean-power-harman.js";
import * as harman from "./strength/jump-power-harman.js";
import * as sayers from "./strength/jump-power-sayers.js";
import * as perMass from "./strength/load-over-mass.js";
import * as older from "./strength/older-adult-limits.js";
import * as span from "./strength/one-rm-span.js";
import * as stepping from "./strength/oxygen-cost-stepping.js";
import * as climbed from "./strength/step-vertical-metres.js";
import * as rate from "./strength/step-vertical-rate.js";
import { writeGrip } from "./strength/write-grip.js";
import { writeLift } from "./strength/write-lift.js";

const NO_NORM = "No sound norm for the general population is known: follow the client's own change.";

export function deriveStrength(book: Notebook, visit: Visit): void {
  const block = visit.session.strength;
  if (block === undefined) return;
  const key = (name: string) => `${visit.file} strength.${name}`;
  if (block.grip !== undefined) writeGrip(book, visit, block.grip);
  writeOlderAdult(book, visit);
  if (block.push_ups !== undefined) {
    book.record("push_ups", block.push_ups.repetitions, key("push_ups.repetitions"));
    const form = block.push_ups.form;
    if (form === undefined)
      book.withhold("push_up_form", "strength.push_ups.form was not recorded, so no rating applies");
    else book.judge("push_up_form", form, `Push-ups from the ${form === "standard" ? "toes" : "knees"}.`);
  }
  writeLifts(book, visit, block);
  if (block.pull_ups !== undefined) {
    const load = block.pull_ups.added_load_kg ?? 0;
    const how = `${block.pull_ups.hold ?? "hold not recorded"}${load > 0 ? `, with ${load} kg added` : ""}`;
    book.record("pull_ups", block.pull_ups.repetitions, key("pull_ups.repetitions"), { note: `${how}. ${NO_NORM}` });
  }
  if (block.jump !== undefined) writeJump(book, block.jump, key);
  if (block.mid_thigh_pull !== undefined) writePull(book, block.mid_thigh_pull, key);
  if (block.step_up !== undefined) writeStepUp(book, block.step_up, key);
}

function writeLifts(book: Notebook, visit: Visit, block: Strength): void {
  const rows = [
    ...(block.bench_press ? writeLift(book, "bench_press", block.bench_press, visit.file) : []),
    ...(block.leg_press ? writeLift(book, "leg_press", block.leg_press, visit.file) : []),
  ];
  if (rows.length > 0)
    book.table(
      "one_repetition_estimates",
      [
        { key: "lift", title: "Lift" },
        { key: "equation", title: "Equation" },
        { key: "estimate", title: "Estimate", unit: "kg", decimals: 1 },
      ],
      rows,
      span.info,
      [],
    );
}

function writeOlderAdult(book: Notebook, visit: Visit): void {
  const grip = book.value("grip_strength");
  const index = book.value("appendicular_lean_mass_index");
  if (visit.ageYears < 60 || (grip === undefined && index === undefined)) return;
  const below = older.olderAdultLimits(visit.client.sex, visit.ageYears, grip, index);
  const limit = older.OLDER_ADULT_LIMITS[visit.client.sex];
  const looked = `Looked at from 60 years: ${[
    ...(grip === undefined ? [] : [`grip against ${limit.gripKg} kg`]),
    ...(index === undefined ? [] : [`limb lean mass index against ${limit.indexKgM2} kg/m²`]),
  ].join(" and ")} (EWGSOP2 2019).`;
  book.judge(
    "older_adult_muscle_limits",
    below === 0 ? "within limits" : "below a limit",
    `${looked} ${below === 0 ? "None is below." : "A value below its limit is a reason to see a physician; it is not a diagnosis."}`,
    {
      rule: `${older.info.id} r${older.info.revision}`,
      inputs: judgedFrom(book, ["grip_strength", "appendicular_lean_mass_index"]),
    },
  );
}

function writeJump(book: Notebook, jump: Jump, key: (name: string) => string): void {
  const how = [jump.method ?? "method not recorded", jump.type ?? "kind not recorded"].join(", ");
  const more = { note: `${how}; best of the trials. ${NO_NORM}` };
  if (jump.height_cm !== undefined) {
    const heights: Ref = { name: key("jump.height_cm"), value: listOf(jump.height_cm), unit: "cm" };
    book.compute("jump_height", bestOf.info, [heights], more);
  } else if (jump.flight_time_s !== undefined) {
    const longest: Ref = { name: key("jump.flight_time_s"), value: Math.max(...listOf(jump.flight_time_s)), unit: "s" };
    book.compute("jump_height", flight.info, [longest], more);
  } else {
    book.withhold("jump_height", "neither height_cm nor flight_time_s was recorded");
    return;
  }
  const estimate = { note: "An estimate by a regression, not a measurement." };
  book.compute("jump_power_sayers", sayers.info, ["jump_height", "body_mass", "age"], estimate);
  book.compute("jump_power_harman", harman.info, ["jump_height", "body_mass", "age"], estimate);
  book.compute("jump_mean_power_harman", harmanMean.info, ["jump_height", "body_mass", "age"], estimate);
}

function writePull(book: Notebook, pull: MidThighPull, key: (name: string) => string): void {
  const forces: Ref = { name: key("mid_thigh_pull.peak_force_n"), value: listOf(pull.peak_force_n), unit: "N" };
  const note = { note: `${pull.force ?? "gross or net not recorded"}. ${NO_NORM}` };
  book.compute("mid_thigh_pull_force", bestOf.info, [forces], note);
  book.compute("mid_thigh_pull_force_per_mass", perMass.info, ["mid_thigh_pull_force", "body_mass"]);
}

function writeStepUp(book: Notebook, step: StepUp, key: (name: string) => string): void {
  const height: Ref = { name: key("step_up.step_height_cm"), value: step.step_height_cm, unit: "cm" };
  const cycles: Ref = { name: key("step_up.cycles_per_min"), value: step.cycles_per_min, unit: "1/min" };
  const load = step.load_kg;
  const carried = load === undefined ? "load not recorded" : `with ${load} kg`;
  book.compute("step_up_vertical_rate", rate.info, [height, cycles], { note: `${carried}. ${NO_NORM}` });
  if (load !== undefined) book.record("step_up_load", load, key("step_up.load_kg"));
  if (step.heart_rate_end_bpm !== undefined)
    book.record("step_up_heart_rate", step.heart_rate_end_bpm, key("step_up.heart_rate_end_bpm"));
  if (step.duration_min !== undefined) {
    const duration: Ref = { name: key("step_up.duration_min"), value: step.duration_min, unit: "min" };
    book.compute("step_up_vertical_metres", climbed.info, [height, cycles, duration]);
  }
  if (load === 0)
    book.compute("step_up_vo2_estimated", stepping.info, [cycles, height], { note: "An estimate, not a measurement." });
  else
    book.withhold(
      "step_up_vo2_estimated",
      load === undefined ? "the load was not recorded" : "the equation holds for stepping without a load",
    );
}
