/** Skinfolds: the sum that is tracked, the technical error of the duplicates, and fat shares as estimates beside it. */

import type { Skinfolds } from "../../kernel/generated/session.js";
import type { Cell } from "../../kernel/measure.js";
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook, Ref } from "../../kernel/notebook.js";
import { listOf } from "../../kernel/readings.js";
import { mean } from "../../kernel/statistics.js";
import type { Visit } from "../../kernel/visit.js";
import { spreadPercent } from "../repeated.js";
import * as duplicates from "../size/duplicate-readings.js";
import * as relative from "../size/relative-technical-error.js";
import * as technical from "../size/technical-error.js";
import * as fourSite from "./density-four-site.js";
import * as sevenMen from "./density-seven-site-men.js";
import * as sevenWomen from "./density-seven-site-women.js";
import * as threeMen from "./density-three-site-men.js";
import * as threeWomen from "./density-three-site-women.js";
import * as brozek from "./fat-percent-brozek.js";
import * as siri from "./fat-percent-siri.js";
import * as sumOf from "./skinfold-sum.js";

const SITES = [
  "chest",
  "midaxillary",
  "triceps",
  "biceps",
  "subscapular",
  "abdomen",
  "suprailiac",
  "thigh",
  "calf",
] as const;
type Site = (typeof SITES)[number];
const SEVEN: readonly Site[] = ["chest", "midaxillary", "triceps", "subscapular", "abdomen", "suprailiac", "thigh"];
const THREE: Readonly<Record<"female" | "male", readonly Site[]>> = {
  male: ["chest", "abdomen", "thigh"],
  female: ["triceps", "suprailiac", "thigh"],
};
const FOUR: readonly Site[] = ["biceps", "triceps", "subscapular", "suprailiac"];

export function writeSkinfolds(book: Notebook, visit: Visit, block: Skinfolds): void {
  const taken = SITES.flatMap((site) => {
    const readings = block[`${site}_mm`];
    return readings === undefined ? [] : [{ site, readings, value: duplicates.duplicateReadings(listOf(readings)) }];
  });
  if (taken.length === 0) {
    book.withhold("skinfold_sum", "no site of skinfolds was recorded");
    return;
  }
  const values = new Map(taken.map(({ site, value }) => [site, value]));
  const sites: Ref = {
    name: taken.map(({ site }) => site).join(" + "),
    value: taken.map(({ value }) => value),
    unit: "mm",
  };
  book.compute("skinfold_sum", sumOf.info, [sites], {
    note: `Sum of ${taken.length} sites; compare only the same sites.`,
  });

  const pairs = taken.flatMap(({ readings }) => {
    const [first, second] = listOf(readings);
    return first === undefined || second === undefined ? [] : [[first, second] as const];
  });
  if (pairs.length > 0) {
    const differences: Ref = { name: "second less first reading", value: pairs.map(([a, b]) => b - a), unit: "mm" };
    book.compute("skinfold_technical_error", technical.info, [differences]);
    const grand: Ref = { name: "mean of readings", value: mean(pairs.flat()), unit: "mm" };
    book.compute("skinfold_relative_technical_error", relative.info, ["skinfold_technical_error", grand]);
  }
  const sex = visit.client.sex;
  const men = sex === "male";
  estimate(book, visit, values, SEVEN, "seven_site", men ? sevenMen.info : sevenWomen.info);
  estimate(book, visit, values, THREE[sex], "three_site", men ? threeMen.info : threeWomen.info);
  const four = sumRef(values, FOUR);
  if (four !== undefined) {
    book.compute("body_density_four_site", fourSite.info, [{ name: "sex", value: sex, unit: "" }, "age", four]);
    share(book, visit, "four_site");
  }
  tabulate(book, taken);
}

type Sums = "seven_site" | "three_site" | "four_site";
/** SEE of fat share, percentage points: Jackson & Pollock 1978 and 1980; Durnin & Womersley's is given as density only. */
const SEE: Readonly<Record<Sums, number>> = { seven_site: 3.8, three_site: 3.9, four_site: 4 };

function sumRef(values: ReadonlyMap<Site, number>, sites: readonly Site[]): Ref | undefined {
  const found = sites.flatMap((site) => values.get(site) ?? []);
  if (found.length < sites.length) return undefined;
  return { name: `sum of ${sites.join(", ")}`, value: found.reduce((sum, mm) => sum + mm, 0), unit: "mm" };
}

function estimate(
  book: Notebook,
  visit: Visit,
  values: ReadonlyMap<Site, number>,
  sites: readonly Site[],
  name: "seven_site" | "three_site",
  formula: typeof sevenMen.info,
): void {
  const sum = sumRef(values, sites);
  if (sum === undefined) return;
  book.compute(`body_density_${name}`, formula, [sum, "age"]);
  share(book, visit, name);
}

function share(book: Notebook, visit: Visit, name: Sums): void {
  const id: MeasureId = `skinfold_fat_percent_${name}`;
  const formula = visit.choices.density_to_fat === "brozek" ? brozek.info : siri.info;
  book.compute(id, formula, [`body_density_${name}`], {
    error: {
      typical: SEE[name],
      from: "3 to 4 percentage points, one standard error of such equations (common practice)",
    },
    note: "An estimate, not a measurement; for change follow the sum of skinfolds.",
  });
}

function tabulate(
  book: Notebook,
  taken: readonly { site: Site; readings: number | readonly number[]; value: number }[],
): void {
  book.table(
    "skinfold_sites",
    [
      { key: "site", title: "Site" },
      { key: "readings", title: "Readings", unit: "mm" },
      { key: "value", title: "Value", unit: "mm", decimals: 1 },
      { key: "spread", title: "First two apart", unit: "%", decimals: 1 },
    ],
    taken.map(({ site, readings, value }): Cell[] => [
      site,
      listOf(readings).join(", "),
      value,
      spreadPercent(readings) ?? null,
    ]),
    duplicates.info,
    [],
  );
}
