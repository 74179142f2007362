import type { Catalogue } from "../measure.js";

export const strengthMeasures = {} as const satisfies Catalogue;
