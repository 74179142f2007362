import type { Catalogue } from "../measure.js";

export const mobilityMeasures = {} as const satisfies Catalogue;
