import type { Catalogue } from "../measure.js";

export const referenceMeasures = {
  reference_percentiles: { title: "Values of the reference groups", section: "validity" },
} as const satisfies Catalogue;
