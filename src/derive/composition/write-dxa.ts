/** What follows from a whole-body scan: masses, indices, ratios, least changes, and the caution that goes with it. */
import type { Dxa } from "../../kernel/generated/session.js";
import type { MeasurementError } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import * as fatShare from "./body-fat-percent.js";
import * as leastChange from "./dxa-least-change.js";
import { limbs, regionShare, writeRegions } from "./dxa-regions.js";
import * as fatFree from "./fat-free-mass.js";
import * as leanOverBmi from "./lean-over-bmi.js";
import * as massIndex from "./mass-index.js";
import * as ratio from "./region-ratio.js";
import * as scanMass from "./scan-mass.js";
import * as total from "./total-mass.js";

/** Largest precision errors (% CV) the official positions accept of a technologist; Hangartner TN et al. 2013, from memory. */
const ACCEPTED = { fat_mass: 3, lean_mass: 2, body_fat_percent: 2 } as const;
const CEILING =
  "largest precision error the ISCD official positions accept (from memory, to be checked against the source)";

export function writeDxa(book: Notebook, visit: Visit, dxa: Dxa): void {
  const key = (name: string) => `${visit.file} dxa.${name}`;
  writeMasses(book, dxa, key);
  const whole = dxa.whole;
  const grams = (name: "fat_g" | "lean_g" | "bmc_g"): Ref => ({
    name: key(`whole.${name}`),
    value: whole?.[name],
    unit: "g",
  });
  if (whole?.fat_g !== undefined && whole.lean_g !== undefined && whole.bmc_g !== undefined) {
    const error = precisionOf(dxa, "body_fat_percent", fatShare.bodyFatPercent(whole.fat_g, whole.lean_g, whole.bmc_g));
    book.compute("body_fat_percent", fatShare.info, [grams("fat_g"), grams("lean_g"), grams("bmc_g")], { error });
  } else book.withhold("body_fat_percent", missing(dxa));
  book.compute("fat_mass_index", massIndex.info, ["fat_mass", "stature"]);
  book.compute("fat_free_mass_index", massIndex.info, ["fat_free_mass", "stature"]);
  book.compute("lean_mass_index", massIndex.info, ["lean_mass", "stature"]);
  writeLimbs(book, dxa, key);
  writeRatios(book, dxa, key);
  writeLeastChanges(book, dxa);
  if (dxa.vat_mass_g !== undefined) book.record("visceral_fat_mass", dxa.vat_mass_g, key("vat_mass_g"), ESTIMATE);
  if (dxa.vat_area_cm2 !== undefined) book.record("visceral_fat_area", dxa.vat_area_cm2, key("vat_area_cm2"), ESTIMATE);
  if (whole?.bmd_g_cm2 !== undefined)
    book.record("whole_body_bmd", whole.bmd_g_cm2, key("whole.bmd_g_cm2"), {
      note: "A whole-body scan is not a site for judging bone: not for diagnosis of osteoporosis, and not classed.",
    });
  writeCaution(book, dxa, key);
  writeRegions(book, dxa);
}

const ESTIMATE = { note: "An estimate of the scanner's software, not a measurement; other makers' numbers differ." };

const missing = (dxa: Dxa): string => {
  if (dxa.whole === undefined) return "dxa.whole was not recorded";
  const parts = (["fat_g", "lean_g", "bmc_g"] as const).filter((part) => dxa.whole?.[part] === undefined);
  return `dxa.whole.${parts.join(", ")} not recorded`;
};

function writeMasses(book: Notebook, dxa: Dxa, key: (name: string) => string): void {
  const whole = dxa.whole;
  const { fat_g: fat, lean_g: lean, bmc_g: bone } = whole ?? {};
  const note = (id: MeasureId, part: string, grams: number | undefined, error?: MeasurementError) => {
    if (grams === undefined) book.withhold(id, `dxa.whole.${part} was not recorded`);
    else
      book.compute(id, total.info, [{ name: key(`whole.${part}`), value: [grams], unit: "g" }], error ? { error } : {});
  };
  note("fat_mass", "fat_g", fat, fat === undefined ? undefined : precisionOf(dxa, "fat_mass", fat / 1000));
  note("lean_mass", "lean_g", lean, lean === undefined ? undefined : precisionOf(dxa, "lean_mass", lean / 1000));
  note("bone_mineral_content", "bmc_g", bone);
  book.compute("fat_free_mass", fatFree.info, ["lean_mass", "bone_mineral_content"]);
  book.compute("dxa_total_mass", scanMass.info, ["fat_mass", "lean_mass", "bone_mineral_content"]);
}

/** The laboratory's own precision error, else the largest accepted one; one SD in the value's unit (kg, percentage points). */
function precisionOf(dxa: Dxa, id: keyof typeof ACCEPTED, value: number): MeasurementError {
  const own = dxa.precision;
  const typical = { fat_mass: own?.fat_g, lean_mass: own?.lean_g, body_fat_percent: own?.fat_percent }[id];
  if (own !== undefined && typical !== undefined)
    return {
      typical: id === "body_fat_percent" ? typical : typical / 1000,
      from: `the laboratory's own precision study: ${own.from}`,
    };
  return { typical: (value * ACCEPTED[id]) / 100, from: `${ACCEPTED[id]} %, the ${CEILING}` };
}

function writeLeastChanges(book: Notebook, dxa: Dxa): void {
  for (const [id, of] of [
    ["fat_mass_least_change", "fat_mass"],
    ["lean_mass_least_change", "lean_mass"],
    ["body_fat_percent_least_change", "body_fat_percent"],
  ] as const) {
    const value = book.value(of);
    if (value === undefined) continue;
    const { typical, from } = precisionOf(dxa, of, value);
    const unit = of === "body_fat_percent" ? "percentage points" : "kg";
    book.compute(id, leastChange.info, [{ name: "precision error", value: typical, unit }], { note: `From ${from}.` });
  }
}

function writeLimbs(book: Notebook, dxa: Dxa, key: (name: string) => string): void {
  const found = limbs(dxa);
  if (typeof found === "string") {
    book.withhold("appendicular_lean_mass_index", found);
    return;
  }
  const input: Ref = { name: key(`lean_g of ${found.names.join(", ")}`), value: found.leanG, unit: "g" };
  book.compute("appendicular_lean_mass", total.info, [input]);
  book.compute("appendicular_lean_mass_index", massIndex.info, ["appendicular_lean_mass", "stature"]);
  if (book.value("body_mass_index") !== undefined)
    book.compute("appendicular_lean_per_bmi", leanOverBmi.info, ["appendicular_lean_mass", "body_mass_index"]);
}

function writeRatios(book: Notebook, dxa: Dxa, key: (name: string) => string): void {
  const { android, gynoid } = dxa;
  if (android === undefined && gynoid === undefined) return;
  const pair = (id: MeasureId, of: string, a: number | undefined, g: number | undefined, unit: string) => {
    if (a === undefined || g === undefined) book.withhold(id, `${of} of android or gynoid region was not recorded`);
    else
      book.compute(id, ratio.info, [
        { name: key(`android ${of}`), value: a, unit },
        { name: key(`gynoid ${of}`), value: g, unit },
      ]);
  };
  pair("android_gynoid_mass_ratio", "fat_g", android?.fat_g, gynoid?.fat_g, "g");
  pair("android_gynoid_percent_ratio", "fat share", regionShare(android), regionShare(gynoid), "%");
}

function writeCaution(book: Notebook, dxa: Dxa, key: (name: string) => string): void {
  if (dxa.dose_usv !== undefined) book.record("dxa_effective_dose", dxa.dose_usv, key("dose_usv"));
  const pregnancy = {
    excluded: "excluded",
    possible: "possible",
    "not asked": "not asked",
    "not applicable": "not applicable",
  };
  const asked = dxa.pregnancy === undefined ? "not recorded" : pregnancy[dxa.pregnancy];
  book.judge(
    "dxa_caution",
    `pregnancy ${asked}`,
    `A whole-body scan uses a small dose of ionising radiation: every scan needs a reason, a licensed operator and must keep to local law, and none is made in pregnancy (here: ${asked}). Bone findings are for a physician to read.`,
  );
}
