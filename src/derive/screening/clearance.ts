/** Whether a medical clearance covers what is planned at a visit. */
import { DAYS_OF_12_MONTHS, daysBetween } from "../../kernel/days.js";
import type { Clearance } from "../../kernel/generated/session.js";

const INTENSITIES = ["light", "moderate", "vigorous", "maximal"] as const;
export type Intensity = (typeof INTENSITIES)[number];

/**
 * Undefined where the clearance covers the intensity at the date, else why it does not. A clearance holds for
 * 12 months while signs and symptoms stay the same (Riebe D et al. 2015), and that has to be said.
 */
export function whyNotCleared(
  clearance: Clearance | undefined,
  intensity: Intensity,
  date: string,
): string | undefined {
  if (clearance === undefined) return "no medical clearance is recorded";
  const days = daysBetween(clearance.date, date);
  if (days < 0) return `the clearance is dated ${clearance.date}, after the visit`;
  if (days > DAYS_OF_12_MONTHS) return `the clearance of ${clearance.date} is older than 12 months`;
  if (INTENSITIES.indexOf(clearance.intensity) < INTENSITIES.indexOf(intensity))
    return `the clearance covers ${clearance.intensity} exercise, and ${intensity} is planned`;
  if (clearance.change_since === true) return "signs, symptoms or disease changed since the clearance";
  if (clearance.change_since === undefined)
    return "whether anything changed since the clearance was not recorded (screening.clearance.change_since)";
  return undefined;
}
