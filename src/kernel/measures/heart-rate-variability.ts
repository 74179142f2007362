import type { Catalogue } from "../measure.js";

export const heartRateVariabilityMeasures = {} as const satisfies Catalogue;
