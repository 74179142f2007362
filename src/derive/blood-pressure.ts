/** Resting blood pressure and pulse: every reading kept, one value by the rule of the scheme, its class and limits. */

import { OutOfRange } from "../kernel/formula.js";
import type { BloodPressure } from "../kernel/generated/session.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";
import * as map from "./blood-pressure/mean-arterial-pressure.js";
import * as classes from "./blood-pressure/pressure-class.js";
import * as pulsePressure from "./blood-pressure/pulse-pressure.js";
import * as limits from "./blood-pressure/referral-limits.js";
import * as average from "./blood-pressure/resting-average.js";
import { judgedFrom } from "./judged-from.js";

export function deriveBloodPressure(book: Notebook, visit: Visit): void {
  const block = visit.session.blood_pressure;
  if (block === undefined) return;
  const scheme = visit.choices.blood_pressure_scheme;
  const readings: readonly average.Reading[] = (block.readings ?? []).map((r) => ({
    systolic: r.systolic_mmhg,
    diastolic: r.diastolic_mmhg,
    pulse: r.pulse_per_min,
    arm: r.arm ?? block.arm,
    posture: r.posture ?? block.posture,
  }));
  const resting = attempt(readings, scheme);
  if (typeof resting === "string") {
    for (const id of ["systolic_pressure", "diastolic_pressure", "blood_pressure_class"] as const)
      book.withhold(id, resting);
    return;
  }
  const used = resting.used.map((i) => readings[i]).filter((r) => r !== undefined);
  const inputs: readonly Ref[] = [
    { name: "readings", value: used.map((r) => `${r.systolic}/${r.diastolic}`).join(", "), unit: "mmHg" },
    { name: "of", value: readings.length, unit: readings.length === 1 ? "reading" : "readings" },
    { name: "scheme", value: scheme, unit: "" },
  ];
  const one = used.length === 1 ? { note: "from a single reading" } : {};
  book.found("systolic_pressure", resting.systolic, average.info, inputs, one);
  book.found("diastolic_pressure", resting.diastolic, average.info, inputs, one);
  book.compute("pulse_pressure", pulsePressure.info, ["systolic_pressure", "diastolic_pressure"]);
  book.compute("mean_arterial_pressure", map.info, ["systolic_pressure", "diastolic_pressure"]);
  if (resting.pulse !== undefined) {
    const pulses: Ref = { name: "pulse readings", value: used.map((r) => r.pulse).join(", "), unit: "1/min" };
    book.found("resting_pulse", resting.pulse, average.info, [pulses, ...inputs.slice(1)]);
  }
  if (resting.armDifference !== undefined)
    book.found("arm_pressure_difference", resting.armDifference, average.info, inputs.slice(1));
  classify(book, resting, scheme);
  refer(book, resting, block);
  tabulate(book, block, resting, inputs.slice(1));
}

function attempt(readings: readonly average.Reading[], scheme: average.Scheme): average.RestingPressure | string {
  if (readings.length === 0) return "blood_pressure.readings holds no reading";
  try {
    return average.restingAverage(readings, scheme);
  } catch (error) {
    if (error instanceof OutOfRange) return error.message;
    throw error;
  }
}

const printed = ({ systolic, diastolic }: average.RestingPressure) =>
  `${toDecimals(systolic, 0)}/${toDecimals(diastolic, 0)} mmHg`;
const MEASURES = ["systolic_pressure", "diastolic_pressure"] as const;

function classify(book: Notebook, resting: average.RestingPressure, scheme: average.Scheme): void {
  if (resting.posture !== undefined && resting.posture !== "seated") {
    book.withhold("blood_pressure_class", `the readings were ${resting.posture}, and the scheme holds for seated ones`);
    return;
  }
  const found = classes.pressureClass(resting.systolic, resting.diastolic, scheme);
  const isolated = found.isolatedSystolic ? ", and as isolated systolic hypertension" : "";
  book.judge(
    "blood_pressure_class",
    found.name,
    `${printed(resting)} lies in the range that ${classes.SCHEME_NAMES[scheme]} lists as ${found.name}${isolated}. One visit is not a diagnosis.`,
    { rule: `${classes.info.id} r${classes.info.revision}`, inputs: judgedFrom(book, MEASURES) },
  );
}

const ADVICE: Readonly<Record<limits.Referral, string>> = {
  emergency: "reaches 180 systolic or 120 diastolic with symptoms: call for medical help now.",
  "urgent referral":
    "reaches 180 systolic or 110 diastolic: no exercise test or training; medical assessment the same day.",
  "routine referral":
    "reaches 140 systolic or 90 diastolic: have it measured again on another day, and see a physician if it stays.",
  "within limits": "is below 140 systolic and below 90 diastolic.",
};

function refer(book: Notebook, resting: average.RestingPressure, block: BloodPressure): void {
  const verdict = limits.referralLimits(resting.systolic, resting.diastolic, block.symptoms === true);
  book.judge("blood_pressure_referral", verdict, `${printed(resting)} ${ADVICE[verdict]}`, {
    rule: `${limits.info.id} r${limits.info.revision}`,
    inputs: judgedFrom(book, MEASURES),
  });
}

function tabulate(
  book: Notebook,
  block: BloodPressure,
  resting: average.RestingPressure,
  inputs: readonly Ref[],
): void {
  book.table(
    "blood_pressure_readings",
    [
      { key: "time", title: "Time" },
      { key: "systolic", title: "Systolic", unit: "mmHg", decimals: 0 },
      { key: "diastolic", title: "Diastolic", unit: "mmHg", decimals: 0 },
      { key: "pulse", title: "Pulse", unit: "1/min", decimals: 0 },
      { key: "arm", title: "Arm" },
      { key: "cuff", title: "Cuff" },
      { key: "posture", title: "Posture" },
      { key: "rest", title: "Rest before", unit: "min", decimals: 0 },
      { key: "counts", title: "Counts" },
    ],
    (block.readings ?? []).map((r, i): Cell[] => [
      r.time ?? null,
      r.systolic_mmhg,
      r.diastolic_mmhg,
      r.pulse_per_min ?? null,
      r.arm ?? block.arm ?? null,
      r.cuff ?? block.cuff ?? null,
      r.posture ?? block.posture ?? null,
      r.rest_min ?? block.rest_min ?? null,
      resting.used.includes(i) ? "yes" : "no",
    ]),
    average.info,
    inputs,
  );
}
