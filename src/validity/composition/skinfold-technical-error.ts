/**
 * The measurer's own duplicates agree within a relative technical error of 5 % (7.5 % for beginners). With fewer than
 * three sites the error is not known well enough to judge.
 */

import { roundTo, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";

export const rule: Rule = {
  id: "skinfold-technical-error",
  revision: 1,
  title: "Technical error of the skinfolds",
  section: "composition",
  source: {
    authors: "Esparza-Ros F, Vaquero-Cristóbal R, Marfell-Jones M",
    year: 2019,
    title: "International Standards for Anthropometric Assessment",
    journal: "ISAK",
    where: "largest relative technical error of one measurer: 7.5 % at level 1, 5 % above",
    verified: "memory",
  },
  judge: ({ value, entry }) => {
    const error = value("skinfold_relative_technical_error");
    const sites = entry("skinfold_sites");
    if (error === undefined || sites?.kind !== "table" || sites.rows.length < 3 || roundTo(error, 1) <= 5) return [];
    const because = "Folds were taken at different places or read before the caliper settled.";
    return [
      finding("weakens", `relative technical error ${toDecimals(error, 1)} %`, "5 % (7.5 % for beginners)", because, [
        "skinfold_sum",
      ]),
    ];
  },
};
