/** Field tests: distances and times as measured, peak uptake only ever as an estimate. */
import type { FieldTests, LoadedWalk, SixMinuteWalk, TreadmillTime } from "../kernel/generated/session.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { ESTIMATE, given, writeEstimate } from "./field/estimate.js";
import * as pandolf from "./field/load-carriage-pandolf.js";
import * as mileAndHalf from "./field/mile-and-half-run-george.js";
import * as mileJog from "./field/mile-jog-george.js";
import * as mileWalk from "./field/mile-walk-kline.js";
import * as percent from "./field/percent-of-reference.js";
import * as shuttle from "./field/shuttle-run-leger.js";
import * as shuttleMen from "./field/shuttle-run-stickland-men.js";
import * as shuttleWomen from "./field/shuttle-run-stickland-women.js";
import * as chetta from "./field/six-minute-walk-chetta.js";
import * as enrightMen from "./field/six-minute-walk-enright-men.js";
import * as enrightWomen from "./field/six-minute-walk-enright-women.js";
import * as balkeMen from "./field/treadmill-time-balke-men.js";
import * as balkeWomen from "./field/treadmill-time-balke-women.js";
import * as bruce from "./field/treadmill-time-bruce.js";
import * as foster from "./field/treadmill-time-foster.js";
import * as pollock from "./field/treadmill-time-pollock.js";
import * as cooper from "./field/twelve-minute-run-cooper.js";
import * as twoKmMen from "./field/two-km-walk-oja-men.js";
import * as twoKmWomen from "./field/two-km-walk-oja-women.js";

type Key = (name: string) => string;

export function deriveField(book: Notebook, visit: Visit): void {
  const block = visit.session.field_tests;
  if (block === undefined) return;
  const key = (name: string) => `${visit.file} field_tests.${name}`;
  const sex: Ref = { name: "sex", value: visit.client.sex, unit: "" };
  writeWalks(book, visit, block, key, sex);
  writeRuns(book, visit, block, key, sex);
  if (block.treadmill_time !== undefined) writeTreadmillTime(book, visit, block.treadmill_time, key, sex);
  if (block.loaded_walk !== undefined) writeLoadedWalk(book, block.loaded_walk, key);
}

function writeWalks(book: Notebook, visit: Visit, block: FieldTests, key: Key, sex: Ref): void {
  const { mile_walk: mile, two_km_walk: twoKm } = block;
  if (mile !== undefined) {
    const time: Ref = { name: key("mile_walk.time_min"), value: mile.time_min, unit: "min" };
    const pulse = given(key("mile_walk.heart_rate_bpm"), mile.heart_rate_bpm, "1/min");
    if (pulse === undefined) book.withhold("vo2max_estimate_mile_walk", "heart rate at the end was not recorded");
    else writeEstimate(book, "vo2max_estimate_mile_walk", mileWalk.info, [sex, "age", "body_mass", time, pulse]);
  }
  if (twoKm !== undefined) {
    const time: Ref = { name: key("two_km_walk.time_min"), value: twoKm.time_min, unit: "min" };
    const pulse = given(key("two_km_walk.heart_rate_bpm"), twoKm.heart_rate_bpm, "1/min");
    const formula = visit.client.sex === "male" ? twoKmMen.info : twoKmWomen.info;
    if (pulse === undefined) book.withhold("vo2max_estimate_two_km_walk", "heart rate at the end was not recorded");
    else writeEstimate(book, "vo2max_estimate_two_km_walk", formula, ["age", "body_mass", time, pulse]);
  }
  if (block.six_minute_walk !== undefined) writeSixMinuteWalk(book, visit, block.six_minute_walk, key, sex);
}

function writeSixMinuteWalk(book: Notebook, visit: Visit, walk: SixMinuteWalk, key: Key, sex: Ref): void {
  const corridor = walk.corridor_m === undefined ? "corridor length not recorded" : `corridor of ${walk.corridor_m} m`;
  const trial = walk.trial === undefined ? "trial not recorded" : `trial ${walk.trial}`;
  book.record("six_minute_walk_distance", walk.distance_m, key("six_minute_walk.distance_m"), {
    note: `${corridor}, ${trial}; distance rises with practice and with a longer corridor.`,
  });
  if (visit.ageYears < 50)
    book.compute("six_minute_walk_reference", chetta.info, [sex, "stature", "age"], { note: chetta.info.caveat ?? "" });
  else {
    const formula = visit.client.sex === "male" ? enrightMen.info : enrightWomen.info;
    book.compute("six_minute_walk_reference", formula, ["stature", "age", "body_mass"], { note: formula.caveat ?? "" });
  }
  book.compute("six_minute_walk_percent", percent.info, ["six_minute_walk_distance", "six_minute_walk_reference"]);
}

function writeRuns(book: Notebook, visit: Visit, block: FieldTests, key: Key, sex: Ref): void {
  const { twelve_minute_run: twelve, mile_and_half_run: half, mile_jog: jog, shuttle_run: run } = block;
  if (twelve !== undefined) {
    const distance: Ref = { name: key("twelve_minute_run.distance_m"), value: twelve.distance_m, unit: "m" };
    writeEstimate(book, "vo2max_estimate_twelve_minute_run", cooper.info, [distance, "age"]);
  }
  if (half !== undefined) {
    const time: Ref = { name: key("mile_and_half_run.time_min"), value: half.time_min, unit: "min" };
    writeEstimate(book, "vo2max_estimate_mile_and_half_run", mileAndHalf.info, [sex, "age", "body_mass", time]);
  }
  if (jog !== undefined) {
    const time: Ref = { name: key("mile_jog.time_min"), value: jog.time_min, unit: "min" };
    const pulse: Ref = { name: key("mile_jog.heart_rate_bpm"), value: jog.heart_rate_bpm, unit: "1/min" };
    writeEstimate(book, "vo2max_estimate_mile_jog", mileJog.info, [sex, "age", "body_mass", time, pulse]);
  }
  if (run === undefined) return;
  const stage = given(key("shuttle_run.last_stage"), run.last_stage, "");
  const halfStage = given(key("shuttle_run.last_half_stage"), run.last_half_stage, "");
  if (stage === undefined && halfStage === undefined)
    book.withhold("vo2max_estimate_shuttle_run", "neither last_stage nor last_half_stage was recorded");
  if (stage !== undefined) writeEstimate(book, "vo2max_estimate_shuttle_run", shuttle.info, [stage, "age"]);
  const formula = visit.client.sex === "male" ? shuttleMen.info : shuttleWomen.info;
  if (halfStage !== undefined)
    writeEstimate(book, "vo2max_estimate_shuttle_run_half_stage", formula, [halfStage, "age"]);
}

function writeTreadmillTime(book: Notebook, visit: Visit, test: TreadmillTime, key: Key, sex: Ref): void {
  const id = test.protocol === "balke" ? "vo2max_estimate_balke_time" : "vo2max_estimate_bruce_time";
  if (test.handrail === true) {
    book.withhold(id, "the client held the handrail, and the equations hold without");
    return;
  }
  if (test.protocol === "modified-bruce") {
    book.withhold(id, "the equations do not hold for the modified protocol");
    return;
  }
  const time: Ref = { name: key("treadmill_time.time_min"), value: test.time_min, unit: "min" };
  const man = visit.client.sex === "male";
  if (test.protocol === "balke") {
    writeEstimate(book, id, man ? balkeMen.info : balkeWomen.info, [time, "age"]);
    return;
  }
  writeEstimate(book, id, bruce.info, [sex, time, "age"]);
  writeEstimate(book, "vo2max_estimate_bruce_time_by_sex", man ? foster.info : pollock.info, [time]);
}

/** Terrain factors of Pandolf 1977 as commonly tabled (from memory, to be checked against the source). */
const TERRAIN: Readonly<Record<NonNullable<LoadedWalk["terrain"]>, number>> = {
  treadmill: 1,
  paved: 1,
  "dirt-road": 1.1,
  "light-brush": 1.2,
  "heavy-brush": 1.5,
  swamp: 1.8,
  "loose-sand": 2.1,
};

function writeLoadedWalk(book: Notebook, walk: LoadedWalk, key: Key): void {
  const { terrain } = walk;
  if (terrain === undefined || walk.grade_percent === undefined) {
    book.withhold("loaded_walk_metabolic_rate", "terrain and grade_percent are both needed and one was not recorded");
    return;
  }
  book.compute(
    "loaded_walk_metabolic_rate",
    pandolf.info,
    [
      "body_mass",
      { name: key("loaded_walk.load_kg"), value: walk.load_kg, unit: "kg" },
      { name: key("loaded_walk.speed_km_h"), value: walk.speed_km_h, unit: "km/h" },
      { name: key("loaded_walk.grade_percent"), value: walk.grade_percent, unit: "%" },
      { name: `terrain ${terrain}`, value: TERRAIN[terrain], unit: "" },
    ],
    { note: `${ESTIMATE} ${pandolf.info.caveat ?? ""}` },
  );
}
