import type { Catalogue } from "../measure.js";

export const preparationMeasures = {} as const satisfies Catalogue;
