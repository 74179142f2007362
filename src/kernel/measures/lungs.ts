import type { Catalogue } from "../measure.js";

const section = "lungs" as const;
const volume = { section, unit: "L", decimals: 2, rests: ["spirometer"], better: "higher" } as const;
export const lungMeasures = {
  fev1: {
    ...volume,
    title: "FEV1 (BTPS)",
    loinc: "20150-9",
    plain: { name: "Air out in one second", meaning: "How much air you can blow out in the first second." },
  },
  fvc: {
    ...volume,
    title: "FVC (BTPS)",
    loinc: "19868-9",
    plain: { name: "Lung volume you can use", meaning: "All the air you can blow out after a full breath in." },
  },
  fev1_fvc: { section, title: "FEV1/FVC", unit: "ratio", decimals: 2, rests: ["spirometer"], loinc: "19926-5" },
  peak_expiratory_flow: {
    section,
    title: "Peak expiratory flow (BTPS)",
    unit: "L/s",
    decimals: 1,
    rests: ["spirometer"],
    better: "higher",
  },
  fev1_grade: { section, title: "Grade of the FEV1 session" },
  fvc_grade: { section, title: "Grade of the FVC session" },
  fev1_repeatability: { section, title: "Difference of the two largest FEV1", unit: "L", decimals: 3 },
  fvc_repeatability: { section, title: "Difference of the two largest FVC", unit: "L", decimals: 3 },
  mvv: { section, title: "Maximal voluntary ventilation, measured", unit: "L/min", decimals: 0, rests: ["spirometer"] },
  mvv_estimated: { section, title: "Maximal voluntary ventilation, estimated from FEV1", unit: "L/min", decimals: 0 },
  spirometry_manoeuvres: { section, title: "Forced manoeuvres" },
} as const satisfies Catalogue;
