import type { Catalogue } from "../measure.js";

export const thresholdMeasures = {} as const satisfies Catalogue;
