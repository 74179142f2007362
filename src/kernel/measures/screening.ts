import type { Catalogue } from "../measure.js";

export const screeningMeasures = {} as const satisfies Catalogue;
