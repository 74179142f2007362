import type { Catalogue } from "../measure.js";

export const lungMeasures = {} as const satisfies Catalogue;
