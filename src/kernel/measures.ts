/**
 * The catalogue: every measure Waymark knows, domain by domain. Its order inside a section is the order of the
 * results file. A new measure is one row in measures/<domain>.ts.
 */
import type { MeasureInfo } from "./measure.js";
import { altitudeMeasures } from "./measures/altitude.js";
import { bloodPressureMeasures } from "./measures/blood-pressure.js";
import { compositionMeasures } from "./measures/composition.js";
import { economyMeasures } from "./measures/economy.js";
import { fieldMeasures } from "./measures/field.js";
import { heartRateVariabilityMeasures } from "./measures/heart-rate-variability.js";
import { incrementalMeasures } from "./measures/incremental.js";
import { lactateMeasures } from "./measures/lactate.js";
import { lungMeasures } from "./measures/lungs.js";
import { mobilityMeasures } from "./measures/mobility.js";
import { preparationMeasures } from "./measures/preparation.js";
import { programmeMeasures } from "./measures/programme.js";
import { referenceMeasures } from "./measures/reference.js";
import { restMeasures } from "./measures/rest.js";
import { screeningMeasures } from "./measures/screening.js";
import { sizeMeasures } from "./measures/size.js";
import { strengthMeasures } from "./measures/strength.js";
import { thresholdMeasures } from "./measures/thresholds.js";

const all = {
  ...screeningMeasures,
  ...preparationMeasures,
  ...sizeMeasures,
  ...bloodPressureMeasures,
  ...restMeasures,
  ...heartRateVariabilityMeasures,
  ...compositionMeasures,
  ...lungMeasures,
  ...strengthMeasures,
  ...mobilityMeasures,
  ...fieldMeasures,
  ...incrementalMeasures,
  ...thresholdMeasures,
  ...lactateMeasures,
  ...economyMeasures,
  ...programmeMeasures,
  ...altitudeMeasures,
  ...referenceMeasures,
} as const;

export type MeasureId = keyof typeof all;
export const catalogue: Readonly<Record<MeasureId, MeasureInfo>> = all;

const rows = new Map<string, MeasureInfo>(Object.entries(catalogue));

/** The row of an id that may be unknown (read from a file). */
export const measureInfo = (id: string): MeasureInfo | undefined => rows.get(id);
