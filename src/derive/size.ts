/** Size: stature, mass and what follows from them. */
import type { Notebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import * as bmi from "./size/body-mass-index.js";

export function deriveSize(book: Notebook, visit: Visit): void {
  const size = visit.session.size as { mass_kg?: number; stature_cm?: number } | undefined;
  if (size === undefined) return;
  if (size.mass_kg !== undefined) book.record("body_mass", size.mass_kg, `${visit.file} size.mass_kg`);
  if (size.stature_cm !== undefined) book.record("stature", size.stature_cm, `${visit.file} size.stature_cm`);
  book.compute("body_mass_index", bmi.info, ["body_mass", "stature"]);
}
