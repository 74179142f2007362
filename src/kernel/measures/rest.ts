import type { Catalogue } from "../measure.js";

export const restMeasures = {} as const satisfies Catalogue;
