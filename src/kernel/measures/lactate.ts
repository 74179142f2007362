import type { Catalogue } from "../measure.js";

export const lactateMeasures = {} as const satisfies Catalogue;
