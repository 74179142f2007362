import type { Catalogue } from "../measure.js";

export const altitudeMeasures = {} as const satisfies Catalogue;
