/**
 * Oxygen pulse that falls while work and heart rate rise. A leak that opens in the test does this, and VO2, VCO2 and VE
 * then fall together; so does the heart. The leak is looked for first. Limit of this project: 15 % below its highest
 * tenth of the test.
 */
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { columns, readRows } from "../read-rows.js";

const FALL_PCT = 15;

export const rule: Rule = {
  id: "oxygen-pulse-fall",
  revision: 1,
  title: "Fall of the oxygen pulse",
  section: "incremental",
  source: {
    authors: "this project",
    year: null,
    title: "Working limit for a fall of the oxygen pulse in rising work",
    where: "rule stated above",
    verified: "own",
  },
  judge: (findings) => {
    const rows = readRows(findings.entry("oxygen_pulse_course"));
    const [pulses = [], rates = []] = columns(rows, "oxygen_pulse_ml", "heart_rate_bpm");
    const [last, rate] = [pulses[pulses.length - 1], rates[rates.length - 1]];
    if (last === undefined || rate === undefined) return [];
    const top = pulses.reduce((best, x, i) => (x > (pulses[best] as number) ? i : best), 0);
    const highest = pulses[top] as number;
    const fall = (100 * (highest - last)) / highest;
    if (rate < (rates[top] as number) || compareAtDecimals(fall, FALL_PCT, 0) <= 0) return [];
    return [
      finding(
        "weakens",
        `oxygen pulse fell by ${toDecimals(fall, 0)} % while heart rate rose`,
        `a fall up to ${FALL_PCT} %`,
        "Likely causes in the test: a leak that opened (ventilation and output fall with it), a sample line that filled with water. If these are excluded, a physician should see the course.",
        ["oxygen_pulse_peak", "vo2_peak", "vo2_peak_per_mass"],
      ),
    ];
  },
};
