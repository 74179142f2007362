import type { Catalogue } from "../measure.js";

export const sizeMeasures = {
  age: { title: "Age", section: "visit", unit: "years", decimals: 1 },
  stature: { title: "Stature", section: "size", unit: "cm", decimals: 1, rests: ["stadiometer"], loinc: "8302-2" },
  body_mass: {
    title: "Body mass",
    section: "size",
    unit: "kg",
    decimals: 1,
    rests: ["scales"],
    loinc: "29463-7",
    plain: { name: "Body mass", meaning: "What you weigh, in light clothing." },
  },
  body_mass_index: { title: "Body mass index", section: "size", unit: "kg/m²", decimals: 1, loinc: "39156-5" },
  // No LOINC code: 8280-0 is the girth at the umbilicus, and the site here is stated beside the value.
  waist: { title: "Waist circumference", section: "size", unit: "cm", decimals: 1 },
  waist_site: { title: "Site of the waist measurement", section: "size" },
  hip: { title: "Hip circumference", section: "size", unit: "cm", decimals: 1 },
  waist_to_height: {
    title: "Waist-to-height ratio",
    section: "size",
    unit: "ratio",
    decimals: 2,
    better: "lower",
    plain: {
      name: "Waist against height",
      meaning: "Your waist divided by your height: how much of you sits round the middle.",
    },
  },
  waist_to_hip: { title: "Waist-to-hip ratio", section: "size", unit: "ratio", decimals: 2 },
  size_readings: { title: "Readings of stature, mass and girths", section: "size" },
} as const satisfies Catalogue;
