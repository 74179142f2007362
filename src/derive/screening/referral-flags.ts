/**
 * Measured values of this visit beyond published limits for referral. It states what was measured and the limit; it
 * does not diagnose. Limits without a number seen in a guideline are common practice and need the physician's sign-off.
 */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import { roundTo, toDecimals } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import * as referral from "../blood-pressure/referral-limits.js";

/** Resting pulse limits, 1/min: common practice, from memory. */
const PULSE = { high: 100, low: 40 } as const;

export function writeReferralFlags(book: Notebook, visit: Visit): void {
  const rows: Cell[][] = [];
  const systolic = book.value("systolic_pressure");
  const diastolic = book.value("diastolic_pressure");
  const level = book.entry("blood_pressure_referral");
  if (
    systolic !== undefined &&
    diastolic !== undefined &&
    level?.kind === "judgement" &&
    level.verdict !== "within limits"
  )
    rows.push([
      "Resting blood pressure",
      `${toDecimals(systolic, 0)}/${toDecimals(diastolic, 0)} mmHg`,
      level.verdict === "routine referral" ? "140 or 90 mmHg" : "180 or 110 mmHg",
      level.verdict,
      "ESC 2024",
    ]);
  const pulse = book.value("resting_pulse");
  const trained = visit.client.activity === "trained" || visit.client.activity === "highly trained";
  if (pulse !== undefined && (roundTo(pulse, 0) > PULSE.high || (roundTo(pulse, 0) < PULSE.low && !trained)))
    rows.push([
      "Resting pulse",
      `${toDecimals(pulse, 0)} /min`,
      roundTo(pulse, 0) > PULSE.high
        ? `above ${PULSE.high} /min`
        : `below ${PULSE.low} /min in people who are not trained`,
      "routine referral",
      "common practice",
    ]);
  if (rows.length === 0) return;
  book.table(
    "referral_flags",
    [
      { key: "measure", title: "Measure" },
      { key: "found", title: "Found" },
      { key: "limit", title: "Published limit" },
      { key: "urgency", title: "Urgency" },
      { key: "source", title: "Source" },
    ],
    rows,
    referral.info,
    ["systolic_pressure", "diastolic_pressure"],
    "Measured at one visit. No diagnosis.",
  );
}
