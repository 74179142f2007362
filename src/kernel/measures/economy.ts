import type { Catalogue } from "../measure.js";

export const economyMeasures = {} as const satisfies Catalogue;
