/**
 * The masses of a scan add up to the scale's reading. A gap of more than 3 % points to a limb outside the field,
 * clothing or a weighing of another day; more than 10 % to another client's scan.
 */

import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";
import { SCAN_MEASURES } from "./scan-measures.js";

const AFFECTED = ["fat_mass", "lean_mass", "body_fat_percent"] as const;

export const rule: Rule = {
  id: "dxa-mass-agreement",
  revision: 1,
  title: "Scan mass against scale mass",
  section: "composition",
  source: {
    authors: "Waymark",
    year: null,
    title: "Rule of this project",
    where:
      "3 % weakens, 10 % withholds; of 80 published scans 66 lie within 5 % of the weight recorded with them, 1 beyond 10 %",
    verified: "own",
  },
  judge: ({ value }) => {
    const scan = value("dxa_total_mass");
    const scale = value("body_mass");
    if (scan === undefined) return [];
    if (scale === undefined)
      return [notRecorded("body mass", "The scan's mass was held against nothing.", ["dxa_total_mass"])];
    const apart = (100 * (scan - scale)) / scale;
    if (Math.abs(apart) <= 3) return [];
    const found = `scan ${toDecimals(scan, 1)} kg, scale ${toDecimals(scale, 1)} kg: ${toDecimals(Math.abs(apart), 1)} % apart`;
    const fatal = Math.abs(apart) > 10;
    const because = fatal
      ? "The scan or the weighing is of another client or another day."
      : "A limb outside the field, clothing, or a weighing of another day.";
    return [
      finding(fatal ? "fatal" : "weakens", found, fatal ? "10 %" : "3 %", because, fatal ? SCAN_MEASURES : AFFECTED),
    ];
  },
};
