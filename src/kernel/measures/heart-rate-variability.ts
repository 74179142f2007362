import type { Catalogue } from "../measure.js";

const section = "heart_rate_variability" as const;
const rests = ["heart-rate monitor"] as const;

export const heartRateVariabilityMeasures = {
  hrv_record: { title: "RR record", section, rests },
  hrv_artefact_share: { title: "Share of intervals left out", section, unit: "%", decimals: 1, rests },
  hrv_mean_rr: { title: "Mean normal RR interval", section, unit: "ms", decimals: 0, rests },
  hrv_sdnn: { title: "SDNN", section, unit: "ms", decimals: 1, rests, loinc: "80404-7" },
  hrv_rmssd: { title: "RMSSD", section, unit: "ms", decimals: 1, rests },
  hrv_ln_rmssd: { title: "ln RMSSD", section, unit: "ln ms", decimals: 2, rests },
  hrv_pnn50: { title: "pNN50", section, unit: "%", decimals: 1, rests },
} as const satisfies Catalogue;
