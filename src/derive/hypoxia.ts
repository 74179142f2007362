/** The hypoxia test of a visit: what the client breathed, in pressure, and how saturation and heart rate answered. */
import type { HypoxiaStep } from "../kernel/generated/session.js";
import type { Cell } from "../kernel/measure.js";
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import * as equivalent from "./altitude/equivalent-altitude.js";
import * as inspired from "./altitude/inspired-oxygen-pressure.js";
import * as lakeLouise from "./altitude/lake-louise-score.js";
import * as difference from "./arithmetic/difference.js";

export function deriveHypoxia(book: Notebook, visit: Visit): void {
  const test = visit.session.hypoxia;
  if (test === undefined) return;
  const pressureOf = (step: HypoxiaStep) => step.pressure_mmhg ?? visit.session.room?.pressure_mmhg;
  const rows = test.steps.map((step): { pio2: number | null; cells: Cell[] } => {
    const pressure = pressureOf(step);
    const pio2 = pressure === undefined ? null : inspired.inspiredOxygenPressure(step.fio2, pressure);
    const altitude = pressure === undefined || step.fio2 > 0.2095 ? null : tryEquivalent(step.fio2, pressure);
    return {
      pio2,
      cells: [
        step.fio2,
        pressure ?? null,
        pio2,
        altitude,
        step.minutes ?? null,
        step.exercise ?? null,
        step.spo2_pct ?? null,
        step.heart_rate_bpm ?? null,
        step.ventilation_l_min ?? null,
        step.symptoms ?? "not recorded",
      ],
    };
  });
  book.table(
    "hypoxia_steps",
    [
      { key: "fio2", title: "Inspired O₂ fraction", decimals: 4 },
      { key: "pressure", title: "Pressure", unit: "mmHg", decimals: 0 },
      { key: "pio2", title: "Inspired O₂ pressure", unit: "mmHg", decimals: 0 },
      { key: "altitude", title: "Equivalent altitude", unit: "m", decimals: 0 },
      { key: "minutes", title: "Length", unit: "min", decimals: 0 },
      { key: "exercise", title: "Activity" },
      { key: "spo2", title: "Saturation", unit: "%", decimals: 0 },
      { key: "heart_rate", title: "Heart rate", unit: "1/min", decimals: 0 },
      { key: "ventilation", title: "Ventilation", unit: "L/min", decimals: 1 },
      { key: "symptoms", title: "Symptoms" },
    ],
    rows.map((row) => row.cells),
    equivalent.info,
    [{ name: "steps", value: test.steps.length, unit: "steps" }],
    "Equivalent altitude: the mountain with the same inspired oxygen pressure. Other conventions name altitudes up to 400 m different.",
  );
  hypoxiaResponse(
    book,
    test.steps,
    rows.map((row) => row.pio2),
  );
  if (test.lake_louise !== undefined)
    book.table(
      "lake_louise_scores",
      [
        { key: "date", title: "Date" },
        { key: "altitude", title: "Altitude", unit: "m", decimals: 0 },
        { key: "total", title: "Total of 12", decimals: 0 },
        { key: "meets", title: "Meets the definition" },
      ],
      test.lake_louise.map((s) => {
        const total = lakeLouise.lakeLouiseScore(s.headache, s.gastrointestinal, s.fatigue, s.dizziness);
        return [
          s.date ?? null,
          s.altitude_m ?? null,
          total,
          lakeLouise.meetsMountainSickness(s.headache, total) ? "yes" : "no",
        ];
      }),
      lakeLouise.info,
      [{ name: "scores", value: test.lake_louise.length, unit: "" }],
      "A research score; the lack of a headache does not exclude illness.",
    );
}

function tryEquivalent(fio2: number, pressureMmHg: number): number | null {
  try {
    return equivalent.equivalentAltitude(fio2, pressureMmHg);
  } catch {
    return null; // a gas richer than any mountain's air, or thinner than the highest: the cell stays empty
  }
}

/** Rest in room air against rest at the lowest inspired pressure. */
function hypoxiaResponse(book: Notebook, steps: readonly HypoxiaStep[], pressures: readonly (number | null)[]): void {
  const resting = steps.flatMap((step, i) => {
    const pio2 = pressures[i];
    return pio2 != null && (step.exercise ?? "rest") === "rest" ? [{ step, pio2 }] : [];
  });
  const high = resting.reduce<(typeof resting)[number] | undefined>(
    (a, b) => (a && a.pio2 >= b.pio2 ? a : b),
    undefined,
  );
  const low = resting.reduce<(typeof resting)[number] | undefined>(
    (a, b) => (a && a.pio2 <= b.pio2 ? a : b),
    undefined,
  );
  if (high === undefined || low === undefined || high.pio2 - low.pio2 < 10) {
    for (const id of ["hypoxia_saturation_fall", "hypoxia_heart_rate_rise"] as const)
      book.withhold(
        id,
        "the test has no two resting steps with known pressure, one in room air and one at least 10 mmHg lower in oxygen",
      );
    return;
  }
  const at = (pio2: number) => `at ${Math.round(pio2)} mmHg of inspired oxygen`;
  const compare = (
    id: "hypoxia_saturation_fall" | "hypoxia_heart_rate_rise",
    later: number | undefined,
    earlier: number | undefined,
    unit: string,
    names: readonly [string, string],
  ) => {
    if (later === undefined || earlier === undefined) book.withhold(id, "it was not recorded in both resting steps");
    else
      book.compute(id, difference.info, [
        { name: names[0], value: later, unit },
        { name: names[1], value: earlier, unit },
      ]);
  };
  compare("hypoxia_saturation_fall", high.step.spo2_pct, low.step.spo2_pct, "%", [at(high.pio2), at(low.pio2)]);
  compare("hypoxia_heart_rate_rise", low.step.heart_rate_bpm, high.step.heart_rate_bpm, "1/min", [
    at(low.pio2),
    at(high.pio2),
  ]);
}
