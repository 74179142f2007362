/**
 * All derived values of a visit, domain by domain. The order matters only where a domain reads an earlier one
 * (peak uptake per kilogram reads body mass).
 */
import type { Entry } from "../kernel/measure.js";
import { openNotebook } from "../kernel/notebook.js";
import type { Visit } from "../kernel/visit.js";
import { deriveAltitude } from "./altitude.js";
import { deriveBloodPressure } from "./blood-pressure.js";
import { deriveComposition } from "./composition.js";
import { deriveControls } from "./controls.js";
import { deriveField } from "./field.js";
import { deriveHeartRateVariability } from "./heart-rate-variability.js";
import { deriveHypoxia } from "./hypoxia.js";
import { deriveIncremental } from "./incremental.js";
import { deriveIndices } from "./indices.js";
import { deriveLactate } from "./lactate.js";
import { deriveLungs } from "./lungs.js";
import { deriveMobility } from "./mobility.js";
import { deriveRest } from "./rest.js";
import { deriveScreening } from "./screening.js";
import { deriveSize } from "./size.js";
import { deriveStrength } from "./strength.js";
import { deriveSubmaximal } from "./submaximal.js";
import { deriveThresholds } from "./thresholds.js";

export function derive(visit: Visit): readonly Entry[] {
  const book = openNotebook();
  deriveSize(book, visit);
  deriveBloodPressure(book, visit);
  deriveScreening(book, visit); // reads the resting pressure
  deriveControls(book, visit);
  deriveComposition(book, visit);
  deriveLungs(book, visit);
  deriveStrength(book, visit);
  deriveMobility(book, visit);
  deriveField(book, visit);
  deriveSubmaximal(book, visit);
  deriveRest(book, visit);
  deriveHeartRateVariability(book, visit);
  const test = deriveIncremental(book, visit);
  deriveThresholds(book, visit, test);
  deriveLactate(book, visit);
  deriveIndices(book, visit); // reads incremental, thresholds, rest and steps
  deriveHypoxia(book, visit);
  deriveAltitude(book, visit);
  return book.entries();
}
