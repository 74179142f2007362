/**
 * A heart moves slowly: in rising work by some beats from one fifteen-second mean to the next. A jump of more than 25 a
 * minute between neighbouring means of the incremental phase is a strap that counts twice, or an optical sensor that has
 * locked on to the cadence; a peak taken from it would set training too hard. Own rule; the first minute is left out.
 */
import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";
import { finding } from "../finding.js";
import { columns, readRows } from "../read-rows.js";

const LARGEST_STEP = 25;
const FIRST_S = 60;

export const rule: Rule = {
  id: "heart-rate-jump",
  revision: 1,
  title: "Jump of heart rate in the incremental test",
  section: "incremental",
  source: {
    authors: "this project",
    year: null,
    title: "Working limit for the change of heart rate between fifteen-second means",
    where: "rule stated above",
    verified: "own",
  },
  judge: (findings) => {
    const rows = readRows(findings.entry("incremental_bins")).filter((row) => row.phase === "incremental");
    const [times = [], rates = []] = columns(rows, "time_s", "heart_rate_bpm");
    const start = (times[0] ?? 0) + FIRST_S;
    let largest = 0;
    let at = 0;
    for (let i = 1; i < rates.length; i++) {
      const step = (rates[i] as number) - (rates[i - 1] as number);
      if ((times[i] as number) < start || (times[i] as number) - (times[i - 1] as number) > 20) continue;
      if (Math.abs(step) > Math.abs(largest)) {
        largest = step;
        at = times[i] as number;
      }
    }
    if (Math.abs(largest) <= LARGEST_STEP) return [];
    return [
      finding(
        "weakens",
        `heart rate ${largest > 0 ? "rose" : "fell"} by ${toDecimals(Math.abs(largest), 0)} per minute within 15 s, at ${toDecimals(at, 0)} s`,
        `a change up to ${LARGEST_STEP} per minute`,
        "Likely causes: a strap that counts twice or lost contact, an optical sensor that follows the cadence. If it was the heart, a physician should see the recording.",
        ["heart_rate_peak", "heart_rate_at_peak", "oxygen_pulse_peak"],
      ),
    ];
  },
};
