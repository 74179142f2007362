import type { Catalogue } from "../measure.js";

export const compositionMeasures = {} as const satisfies Catalogue;
