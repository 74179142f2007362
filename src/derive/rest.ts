/** Resting gas exchange: the steady window, energy expenditure and its predictions, fuel shares, conditions before it. */
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { restingConditions } from "./rest/conditions.js";
import { restingEnergy } from "./rest/energy.js";
import { restFromSeries } from "./rest/from-series.js";
import * as perMass from "./rest/per-mass.js";
import { predictResting } from "./rest/predictions.js";

/** Reads body_mass, stature and fat_free_mass, so it runs after size and composition. */
export function deriveRest(book: Notebook, visit: Visit): void {
  const { rest } = visit.session;
  if (rest === undefined) return;
  restingConditions(book, visit);
  if (rest.series !== undefined) restFromSeries(book, visit, rest.series);
  else typedRest(book, visit);
  restingEnergy(book, visit);
  if (book.value("resting_vo2") !== undefined)
    book.compute("resting_vo2_per_mass", perMass.info, ["resting_vo2", "body_mass"]);
  predictResting(book, visit);
}

const TYPED = [
  ["resting_vo2", "vo2_ml_min"],
  ["resting_vco2", "vco2_ml_min"],
  ["resting_ventilation", "ventilation_l_min"],
  ["resting_tidal_volume", "tidal_volume_l"],
  ["resting_breathing_frequency", "breathing_frequency_per_min"],
  ["resting_heart_rate", "heart_rate_bpm"],
] as const satisfies readonly (readonly [MeasureId, string])[];

function typedRest(book: Notebook, visit: Visit): void {
  const typed = visit.session.rest?.typed;
  for (const [id, key] of TYPED) {
    const value = typed?.[key];
    if (value !== undefined) book.record(id, value, `${visit.file} rest.typed.${key}`);
    else
      book.withhold(
        id,
        typed === undefined ? "neither a series nor typed values were given" : `rest.typed.${key} was not recorded`,
      );
  }
  book.withhold("rest_trace", "the resting values were typed as means of a window, without a series");
}
