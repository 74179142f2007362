import type { Catalogue } from "../measure.js";

const cuff = ["sphygmomanometer"] as const;
const common = { section: "blood_pressure", rests: cuff } as const;
const pressure = { ...common, unit: "mmHg", decimals: 0 } as const;
export const bloodPressureMeasures = {
  systolic_pressure: {
    ...pressure,
    title: "Systolic blood pressure",
    loinc: "8480-6",
    plain: { name: "Upper blood pressure", meaning: "The pressure in your arteries when the heart beats." },
  },
  diastolic_pressure: {
    ...pressure,
    title: "Diastolic blood pressure",
    loinc: "8462-4",
    plain: { name: "Lower blood pressure", meaning: "The pressure in your arteries between beats." },
  },
  pulse_pressure: { ...pressure, title: "Pulse pressure" },
  mean_arterial_pressure: { ...pressure, title: "Mean arterial pressure" },
  resting_pulse: { ...common, title: "Resting pulse rate", unit: "1/min", decimals: 0, loinc: "8867-4" },
  arm_pressure_difference: { ...pressure, title: "Systolic difference between the arms" },
  blood_pressure_class: { ...common, title: "Blood pressure class" },
  blood_pressure_referral: { ...common, title: "Blood pressure against referral limits" },
  blood_pressure_readings: { ...common, title: "Blood pressure readings" },
} as const satisfies Catalogue;
