/** Girths of the body and the fat share they estimate. */

import type { Girths } from "../../kernel/generated/session.js";
import type { Cell } from "../../kernel/measure.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { listOf, type OneOrMany } from "../../kernel/readings.js";
import type { Visit } from "../../kernel/visit.js";
import { spreadPercent } from "../repeated.js";
import * as duplicates from "../size/duplicate-readings.js";
import * as men from "./girth-fat-men.js";
import * as women from "./girth-fat-women.js";

const PLACES = [
  ["neck_cm", "Neck"],
  ["abdomen_navel_cm", "Abdomen at the navel"],
  ["waist_narrowest_cm", "Waist, narrowest"],
  ["hip_cm", "Hip"],
  ["arm_cm", "Upper arm"],
  ["thigh_cm", "Mid-thigh"],
  ["calf_cm", "Calf"],
] as const;
type Place = (typeof PLACES)[number][0];

export function writeGirths(book: Notebook, visit: Visit, block: Girths): void {
  const rows = PLACES.flatMap(([key, title]): Cell[][] => {
    const readings: OneOrMany | undefined = block[key];
    if (readings === undefined) return [];
    const list = listOf(readings);
    return [[title, list.join(", "), duplicates.duplicateReadings(list), spreadPercent(readings) ?? null]];
  });
  if (rows.length > 0)
    book.table(
      "girth_readings",
      [
        { key: "place", title: "Girth" },
        { key: "readings", title: "Readings", unit: "cm" },
        { key: "value", title: "Value", unit: "cm", decimals: 1 },
        { key: "spread", title: "First two apart", unit: "%", decimals: 2 },
      ],
      rows,
      duplicates.info,
      [],
    );
  const input = (place: Place): Ref | undefined => {
    const readings: OneOrMany | undefined = block[place];
    if (readings === undefined) return undefined;
    const value = duplicates.duplicateReadings(listOf(readings));
    return { name: `${visit.file} girths.${place}`, value, unit: "cm" };
  };
  const neck = input("neck_cm");
  const abdomen = input("abdomen_navel_cm");
  const waist = input("waist_narrowest_cm");
  const hip = input("hip_cm");
  const more = {
    error: { typical: 3.6, from: "standard error of estimate against hydrostatic weighing, Hodgdon & Beckett 1984" },
    note: "An estimate, not a measurement; against DXA it was off by 2 to 3 points in fit people.",
  };
  if (visit.client.sex === "male" && neck !== undefined && abdomen !== undefined)
    book.compute("girth_fat_percent", men.info, [abdomen, neck, "stature", "age"], more);
  else if (visit.client.sex === "female" && neck !== undefined && waist !== undefined && hip !== undefined)
    book.compute("girth_fat_percent", women.info, [waist, hip, neck, "stature", "age"], more);
  else if (neck !== undefined || abdomen !== undefined || waist !== undefined)
    book.withhold(
      "girth_fat_percent",
      `it needs ${visit.client.sex === "male" ? "neck and abdomen at the navel" : "neck, narrowest waist and hip"}`,
    );
}
