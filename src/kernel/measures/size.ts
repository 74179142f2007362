import type { Catalogue } from "../measure.js";

export const sizeMeasures = {
  age: { title: "Age", section: "visit", unit: "years", decimals: 1 },
  stature: { title: "Stature", section: "size", unit: "cm", decimals: 1, rests: ["stadiometer"], loinc: "8302-2" },
  body_mass: { title: "Body mass", section: "size", unit: "kg", decimals: 1, rests: ["scales"], loinc: "29463-7" },
  body_mass_index: { title: "Body mass index", section: "size", unit: "kg/m²", decimals: 1, loinc: "39156-5" },
  waist: { title: "Waist circumference", section: "size", unit: "cm", decimals: 1 },
  waist_to_height: { title: "Waist-to-height ratio", section: "size", unit: "ratio", decimals: 2, better: "lower" },
} as const satisfies Catalogue;
