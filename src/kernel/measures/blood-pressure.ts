import type { Catalogue } from "../measure.js";

const cuff = ["sphygmomanometer"] as const;
export const bloodPressureMeasures = {
  systolic_pressure: {
    title: "Systolic blood pressure",
    section: "blood_pressure",
    unit: "mmHg",
    decimals: 0,
    rests: cuff,
    loinc: "8480-6",
  },
  diastolic_pressure: {
    title: "Diastolic blood pressure",
    section: "blood_pressure",
    unit: "mmHg",
    decimals: 0,
    rests: cuff,
    loinc: "8462-4",
  },
  pulse_pressure: { title: "Pulse pressure", section: "blood_pressure", unit: "mmHg", decimals: 0, rests: cuff },
  mean_arterial_pressure: {
    title: "Mean arterial pressure",
    section: "blood_pressure",
    unit: "mmHg",
    decimals: 0,
    rests: cuff,
  },
  blood_pressure_class: { title: "Blood pressure class", section: "blood_pressure", rests: cuff },
} as const satisfies Catalogue;
