import type { Catalogue } from "../measure.js";

export const programmeMeasures = {} as const satisfies Catalogue;
