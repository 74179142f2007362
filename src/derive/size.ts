/** Size: stature, mass, girths of the trunk and what follows from them. */

import type { Cell } from "../kernel/measure.js";
import type { Notebook } from "../kernel/notebook.js";
import { listOf, type OneOrMany } from "../kernel/readings.js";
import type { Visit } from "../kernel/visit.js";
import { spreadPercent, writeRepeated } from "./repeated.js";
import * as bmi from "./size/body-mass-index.js";
import * as duplicates from "./size/duplicate-readings.js";
import * as technicalError from "./size/technical-error.js";
import * as waistToHeight from "./size/waist-to-height.js";
import * as waistToHip from "./size/waist-to-hip.js";

const SITES = {
  midpoint: "halfway between the lowest rib and the iliac crest",
  "iliac-crest": "just above the iliac crest",
  narrowest: "at the smallest girth between rib and iliac crest",
} as const;

const PREGNANT = "the limits of body mass index and waist do not hold in pregnancy";

export function deriveSize(book: Notebook, visit: Visit): void {
  book.record("age", visit.ageYears, "client.yaml birth_date");
  const size = visit.session.size;
  if (size === undefined) return;
  const key = (name: string) => `${visit.file} size.${name}`;
  writeRepeated(book, "stature", size.stature_cm, key("stature_cm"), "cm");
  writeRepeated(book, "body_mass", size.mass_kg, key("mass_kg"), "kg");
  if (size.pregnant === true) book.withhold("body_mass_index", PREGNANT);
  else book.compute("body_mass_index", bmi.info, ["body_mass", "stature"], { note: bmi.info.caveat ?? "" });
  writeRepeated(book, "waist", size.waist_cm, key("waist_cm"), "cm");
  writeRepeated(book, "hip", size.hip_cm, key("hip_cm"), "cm");
  if (size.waist_cm !== undefined) {
    const site = size.waist_site;
    if (site === undefined)
      book.withhold(
        "waist_site",
        "waist_site was not recorded, so the waist cannot be compared with a limit or a visit",
      );
    else book.judge("waist_site", site, `The waist was measured ${SITES[site]}.`);
    if (size.pregnant === true) book.withhold("waist_to_height", PREGNANT);
    else book.compute("waist_to_height", waistToHeight.info, ["waist", "stature"]);
  }
  if (size.hip_cm !== undefined && size.pregnant === true) book.withhold("waist_to_hip", PREGNANT);
  else if (size.hip_cm !== undefined) book.compute("waist_to_hip", waistToHip.info, ["waist", "hip"]);
  writeReadings(book, [
    ["Stature", "cm", size.stature_cm],
    ["Body mass", "kg", size.mass_kg],
    ["Waist", "cm", size.waist_cm],
    ["Hip", "cm", size.hip_cm],
  ]);
}

/** The single readings, where any measure was read more than once: all of them, their spread and technical error. */
function writeReadings(book: Notebook, measures: readonly [string, string, OneOrMany | undefined][]): void {
  const taken = measures.flatMap(([title, unit, readings]) =>
    readings === undefined ? [] : [{ title, unit, readings }],
  );
  if (!taken.some(({ readings }) => listOf(readings).length > 1)) return;
  book.table(
    "size_readings",
    [
      { key: "measure", title: "Measure" },
      { key: "unit", title: "Unit" },
      { key: "readings", title: "Readings" },
      { key: "spread", title: "First two apart", unit: "%", decimals: 2 },
      { key: "technical_error", title: "Technical error", decimals: 2 },
    ],
    taken.map(({ title, unit, readings }): Cell[] => {
      const [first, second] = listOf(readings);
      const pair = first !== undefined && second !== undefined ? [second - first] : undefined;
      return [
        title,
        unit,
        listOf(readings).join(", "),
        spreadPercent(readings) ?? null,
        pair === undefined ? null : technicalError.technicalError(pair),
      ];
    }),
    duplicates.info,
    [],
    "Technical error from one pair says little; over many clients it is the laboratory's own.",
  );
}
