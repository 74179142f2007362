/** A resting window that was not steady: typed with its variation above 10 %, or chosen as all after settling. */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Finding, Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";
import { readRows } from "../read-rows.js";

const AFFECTED = ["resting_vo2", "resting_vco2", "resting_energy_expenditure"] as const;
const LIMIT_PCT = 10;

export const rule: Rule = {
  id: "resting-steady",
  revision: 1,
  title: "Steadiness of the resting measurement",
  section: "rest",
  source: {
    authors: "Popp CJ and others; Irving and others",
    year: "2016–2019",
    title: "Steady state and time to reach it in resting indirect calorimetry",
    journal: "Clin Nutr; Front Nutr",
    doi: "10.3389/fnut.2016.00049",
    where: "variation of VO2 and VCO2 of 10 % or less over 5 min",
    verified: "seen",
  },
  judge: ({ visit, entry, value }) => {
    const { rest } = visit.session;
    if (rest === undefined || value("resting_vo2") === undefined) return [];
    const row = readRows(entry("rest_window"))[0];
    const number = (key: string) => (typeof row?.[key] === "number" ? (row[key] as number) : undefined);
    const known =
      rest.series === undefined ? rest.typed : { vo2_cv_pct: number("cv_vo2_pct"), vco2_cv_pct: number("cv_vco2_pct") };
    const because = "A resting value means the resting person only where it is steady.";
    return (
      [
        ["VO2", known?.vo2_cv_pct],
        ["VCO2", known?.vco2_cv_pct],
      ] as const
    ).flatMap(([name, cv]): Finding[] => {
      if (cv === undefined) return [notRecorded(`variation of ${name} in the window`, because, AFFECTED)];
      if (compareAtDecimals(cv, LIMIT_PCT, 1) <= 0) return [];
      return [finding("weakens", `${name} varied by ${toDecimals(cv, 1)} %`, `${LIMIT_PCT} %`, because, AFFECTED)];
    });
  },
};
