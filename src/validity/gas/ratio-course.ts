/**
 * The respiratory exchange ratio starts near 0.8 to 0.95 and rises through a test to exhaustion. A ratio outside that
 * course points to one analyser: they move the ratio apart, which a leak or a flow error does not.
 * Limits of this project: first third 0.70 to 1.10, no minute above 1.45, no fall by more than 0.03 from start to end.
 * (Sixty-seven ramps of trained runners: first third 0.79 to 0.99, highest minute 0.93 to 1.15, rise 0.05 to 0.30.)
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Finding, Rule } from "../../kernel/rule.js";
import { mean } from "../../kernel/statistics.js";
import { finding } from "../finding.js";
import { columns, readRows } from "../read-rows.js";

const AFFECTED = ["rer_peak", "vo2_peak", "vo2_peak_per_mass"] as const;
const START = { low: 0.7, high: 1.1 };
const HIGHEST = 1.45;
const FALL = 0.03;

export const rule: Rule = {
  id: "ratio-course",
  revision: 1,
  title: "Course of the respiratory exchange ratio",
  section: "incremental",
  source: {
    authors: "Glaab T, Taube C",
    year: 2022,
    title: "Practical guide to cardiopulmonary exercise testing in adults",
    journal: "Respir Res 23:9",
    doi: "10.1186/s12931-021-01895-6",
    where:
      "Table 1: 0.7 to 1.0 at rest, 1.1 or more at peak in the healthy; the limits here are working limits of this project",
    verified: "seen",
  },
  judge: (findings) => {
    const rows = readRows(findings.entry("incremental_bins")).filter((row) => row.phase === "incremental");
    const [ratios = []] = columns(rows, "rer");
    if (ratios.length < 12) return [];
    const out: Finding[] = [];
    const start = mean(ratios.slice(0, Math.floor(ratios.length / 3)));
    if (compareAtDecimals(start, START.low, 2) < 0 || compareAtDecimals(start, START.high, 2) > 0)
      out.push(
        finding(
          "weakens",
          `mean ratio ${toDecimals(start, 2)} in the first third`,
          `${toDecimals(START.low, 2)} to ${toDecimals(START.high, 2)}`,
          start < START.low
            ? "Likely causes: an oxygen analyser that reads low (uptake too high) or a carbon dioxide analyser that reads low."
            : "Likely causes: overbreathing from the start, a carbon dioxide analyser that reads high, an oxygen analyser that reads high (uptake too low).",
          AFFECTED,
        ),
      );
    const minutes = ratios.slice(3).map((_, i) => mean(ratios.slice(i, i + 4)));
    const highest = Math.max(...minutes);
    if (compareAtDecimals(highest, HIGHEST, 2) > 0)
      out.push(
        finding(
          "weakens",
          `ratio of ${toDecimals(highest, 2)} over a minute`,
          `up to ${toDecimals(HIGHEST, 2)}`,
          "Likely causes: a carbon dioxide analyser that reads high, an oxygen analyser that drifted up, room air drawn in at the sample line.",
          AFFECTED,
        ),
      );
    const rise = mean(ratios.slice(-4)) - mean(ratios.slice(0, 4));
    if (compareAtDecimals(rise, -FALL, 2) < 0)
      out.push(
        finding(
          "weakens",
          `the ratio fell by ${toDecimals(-rise, 2)} from the first to the last minute`,
          `a rise, or a fall up to ${toDecimals(FALL, 2)}`,
          "Likely causes: drift of one analyser during the test, a sample line that filled with water, a start in overbreathing.",
          AFFECTED,
        ),
      );
    return out;
  },
};
