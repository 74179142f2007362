/** Predictions of resting energy expenditure: all that apply, each with its own error, and the one chosen. */

import type { Cell, Column } from "../../kernel/measure.js";
import type { FormulaName, Notebook, Ref } from "../../kernel/notebook.js";
import { roundTo } from "../../kernel/rounding.js";
import type { Visit } from "../../kernel/visit.js";
import { attempt, foundOrWithheld } from "../found-or-withheld.js";
import * as cunningham80 from "./cunningham-1980.js";
import * as cunningham91 from "./cunningham-1991.js";
import * as original from "./harris-benedict-1919.js";
import * as revised from "./harris-benedict-revised.js";
import * as mifflin from "./mifflin-st-jeor.js";
import * as owen from "./owen.js";
import * as percent from "./percent-of-predicted.js";
import * as schofield from "./schofield.js";

interface Prediction {
  readonly info: FormulaName & { readonly title: string; readonly source: { readonly verified: string } };
  readonly inputs: readonly Ref[];
  readonly needs: readonly ("body_mass" | "stature" | "fat_free_mass")[];
  readonly run: (value: (id: "body_mass" | "stature" | "fat_free_mass") => number) => number;
  /** The equation's own error for one person, as its source prints it. */
  readonly ownError: string;
  /** One standard error in kcal/d, where the source prints one or limits that give it. */
  readonly typical?: number;
}

const COLUMNS: readonly Column[] = [
  { key: "equation", title: "Equation" },
  { key: "predicted_kcal_d", title: "Predicted", unit: "kcal/d", decimals: 0 },
  { key: "measured_share_pct", title: "Measured as a share", unit: "%", decimals: 0 },
  { key: "own_error", title: "The equation's own error" },
  { key: "because", title: "Not given because" },
];

/** Writes the table of predictions, the chosen prediction and the measured value as a share of it. */
export function predictResting(book: Notebook, visit: Visit): void {
  const all = predictions(visit);
  const measured = book.value("resting_energy_expenditure");
  const rows = Object.values(all).map((p): Cell[] => {
    const because = absence(book, p);
    const outcome = because === undefined ? attempt(() => p.run((id) => book.value(id) ?? Number.NaN)) : { because };
    if (outcome.because !== undefined) return [p.info.title, null, null, p.ownError, outcome.because];
    const share = measured === undefined ? null : percent.percentOfPredicted(measured, outcome.value);
    return [p.info.title, outcome.value, share, p.ownError, null];
  });
  const personal: Ref[] = [
    { name: "age", value: roundTo(visit.ageYears, 1), unit: "years" },
    { name: "sex", value: visit.client.sex, unit: "" },
  ];
  book.table("resting_energy_predictions", COLUMNS, rows, percent.info, [
    ...(measured === undefined ? [] : (["resting_energy_expenditure"] as const)),
    ...personal,
  ]);

  const chosen: Prediction = all[visit.choices.resting_prediction];
  const because = absence(book, chosen);
  if (because !== undefined) book.withhold("resting_energy_predicted", because);
  else
    foundOrWithheld(
      book,
      "resting_energy_predicted",
      chosen.info,
      [...chosen.inputs, ...personal],
      () => chosen.run((id) => book.value(id) ?? Number.NaN),
      {
        note: `prediction; its own error: ${chosen.ownError}`,
        ...(chosen.typical === undefined ? {} : { error: { typical: chosen.typical, from: chosen.info.title } }),
      },
    );
  book.compute("resting_energy_percent_predicted", percent.info, [
    "resting_energy_expenditure",
    "resting_energy_predicted",
  ]);
}

function absence(book: Notebook, prediction: Prediction): string | undefined {
  const words = { body_mass: "body mass", stature: "stature", fat_free_mass: "fat-free mass" } as const;
  const absent = prediction.needs.filter((id) => book.value(id) === undefined);
  return absent.length === 0
    ? undefined
    : `${absent.map((id) => words[id]).join(" and ")} ${absent.length === 1 ? "was" : "were"} not measured`;
}

function predictions(visit: Visit) {
  const { ageYears: age } = visit;
  const { sex } = visit.client;
  const size = { inputs: ["body_mass", "stature"], needs: ["body_mass", "stature"] } as const;
  const lean = { inputs: ["fat_free_mass"], needs: ["fat_free_mass"] } as const;
  const mass = { inputs: ["body_mass"], needs: ["body_mass"] } as const;
  const see = attempt(() => schofield.schofieldError(age, sex));
  return {
    "mifflin-st-jeor": {
      info: mifflin.info,
      ...size,
      run: (v) => mifflin.mifflinStJeor(v("body_mass"), v("stature"), age, sex),
      ownError: "R² 0.71 in 498 adults",
    },
    "harris-benedict-revised": {
      info: revised.info,
      ...size,
      run: (v) => revised.harrisBenedictRevised(v("body_mass"), v("stature"), age, sex),
      ownError: `95 % limits ±${sex === "male" ? 213 : 201} kcal/d`,
      typical: (sex === "male" ? 213 : 201) / 1.96,
    },
    "harris-benedict-1919": {
      info: original.info,
      ...size,
      run: (v) => original.harrisBenedict1919(v("body_mass"), v("stature"), age, sex),
      ownError: "about 5 % too high in a later sample (Mifflin 1990)",
    },
    "cunningham-1980": {
      info: cunningham80.info,
      ...lean,
      run: (v) => cunningham80.cunningham1980(v("fat_free_mass")),
      ownError: "not printed in the text read",
    },
    "cunningham-1991": {
      info: cunningham91.info,
      ...lean,
      run: (v) => cunningham91.cunningham1991(v("fat_free_mass")),
      ownError: "from memory, to be checked against the source",
    },
    owen: {
      info: owen.info,
      ...mass,
      run: (v) => owen.owen(v("body_mass"), age, sex),
      ownError: sex === "male" ? "from memory, to be checked against the source" : "not printed in the text read",
    },
    schofield: {
      info: schofield.info,
      ...mass,
      run: (v) => schofield.schofield(v("body_mass"), age, sex),
      ownError: see.because === undefined ? `standard error ${see.value} kcal/d` : "outside its ages",
      ...(see.because === undefined ? { typical: see.value } : {}),
    },
  } satisfies Record<string, Prediction>;
}
