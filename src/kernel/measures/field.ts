import type { Catalogue } from "../measure.js";

export const fieldMeasures = {} as const satisfies Catalogue;
