import type { Catalogue } from "../measure.js";

export const incrementalMeasures = {} as const satisfies Catalogue;
