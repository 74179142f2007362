/** Every measure that a whole-body scan gives, but for the dose and the caution, which hold whatever the scan is worth. */
import { catalogue, type MeasureId } from "../../kernel/measures.js";

export const SCAN_MEASURES: readonly MeasureId[] = (Object.keys(catalogue) as MeasureId[]).filter(
  (id) => catalogue[id].rests?.includes("dxa") && id !== "dxa_effective_dose" && id !== "dxa_caution",
);
