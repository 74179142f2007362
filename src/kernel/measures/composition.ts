import type { Catalogue } from "../measure.js";

const scan = { section: "composition", rests: ["dxa"] } as const;
const kg = { ...scan, unit: "kg", decimals: 1 } as const;
const perSquare = { ...scan, unit: "kg/m²", decimals: 1 } as const;
const caliper = { section: "composition" } as const;
const percent = { section: "composition", unit: "%", decimals: 1 } as const;
export const compositionMeasures = {
  body_fat_percent: {
    ...scan,
    title: "Body fat share (DXA)",
    unit: "%",
    decimals: 1,
    plain: { name: "Body fat", meaning: "The share of your body mass that is fat, from the body scan." },
  },
  fat_mass: {
    ...kg,
    title: "Fat mass (DXA)",
    plain: { name: "Fat mass", meaning: "How many kilograms of you are fat, from the body scan." },
  },
  lean_mass: {
    ...kg,
    title: "Lean soft-tissue mass, without bone (DXA)",
    better: "higher",
    plain: { name: "Lean mass", meaning: "Muscle and everything else that is neither fat nor bone." },
  },
  bone_mineral_content: { ...kg, decimals: 2, title: "Bone mineral content, whole body (DXA)" },
  fat_free_mass: { ...kg, title: "Fat-free mass, lean with bone (DXA)" },
  dxa_total_mass: { ...kg, title: "Total mass by DXA" },
  fat_mass_index: { ...perSquare, title: "Fat mass index" },
  fat_free_mass_index: { ...perSquare, title: "Fat-free mass index (lean with bone)" },
  lean_mass_index: { ...perSquare, title: "Lean mass index (lean without bone)" },
  appendicular_lean_mass: { ...kg, title: "Appendicular lean mass" },
  appendicular_lean_mass_index: { ...perSquare, decimals: 2, title: "Appendicular lean mass index" },
  appendicular_lean_per_bmi: { ...scan, title: "Appendicular lean mass over body mass index", unit: "m²", decimals: 3 },
  android_gynoid_mass_ratio: { ...scan, title: "Android to gynoid ratio of fat mass", unit: "ratio", decimals: 2 },
  android_gynoid_percent_ratio: { ...scan, title: "Android to gynoid ratio of fat share", unit: "ratio", decimals: 2 },
  visceral_fat_mass: { ...scan, title: "Visceral adipose tissue mass (DXA estimate)", unit: "g", decimals: 0 },
  visceral_fat_area: { ...scan, title: "Visceral adipose tissue area (DXA estimate)", unit: "cm²", decimals: 0 },
  whole_body_bmd: { ...scan, title: "Bone mineral density of the whole-body scan", unit: "g/cm²", decimals: 3 },
  fat_mass_least_change: { ...kg, decimals: 2, title: "Least change of fat mass that is beyond error" },
  lean_mass_least_change: { ...kg, decimals: 2, title: "Least change of lean mass that is beyond error" },
  body_fat_percent_least_change: {
    ...scan,
    title: "Least change of body fat share that is beyond error",
    unit: "percentage points",
    decimals: 1,
  },
  dxa_effective_dose: { ...scan, title: "Effective dose of the scan", unit: "µSv", decimals: 1 },
  dxa_caution: { ...scan, title: "Caution for the scan" },
  dxa_regions: { ...scan, title: "Regions of the scan" },
  skinfold_sum: {
    ...caliper,
    title: "Sum of skinfolds",
    unit: "mm",
    decimals: 1,
    plain: {
      name: "Sum of skinfolds",
      meaning: "The thickness of the fat under your skin, added over the sites measured.",
    },
  },
  skinfold_technical_error: {
    ...caliper,
    title: "Technical error of the skinfold duplicates",
    unit: "mm",
    decimals: 2,
  },
  skinfold_relative_technical_error: { ...percent, title: "Relative technical error of the skinfold duplicates" },
  body_density_seven_site: { ...caliper, title: "Body density, seven skinfolds", unit: "g/mL", decimals: 4 },
  body_density_three_site: { ...caliper, title: "Body density, three skinfolds", unit: "g/mL", decimals: 4 },
  body_density_four_site: { ...caliper, title: "Body density, four skinfolds", unit: "g/mL", decimals: 4 },
  skinfold_fat_percent_seven_site: { ...percent, title: "Estimated fat share, seven skinfolds" },
  skinfold_fat_percent_three_site: { ...percent, title: "Estimated fat share, three skinfolds" },
  skinfold_fat_percent_four_site: { ...percent, title: "Estimated fat share, four skinfolds" },
  skinfold_sites: { ...caliper, title: "Skinfolds by site" },
  girth_fat_percent: { ...percent, title: "Estimated fat share from girths" },
  girth_readings: { ...caliper, title: "Girths" },
  impedance_fat_percent: { ...percent, rests: ["impedance"], title: "Estimated fat share by impedance" },
  impedance_phase_angle: { ...caliper, rests: ["impedance"], title: "Phase angle at 50 kHz", unit: "°", decimals: 1 },
} as const satisfies Catalogue;
