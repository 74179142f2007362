/* Made by npm run generate from the modules. Do not edit. */
import type { Rule } from "./kernel/rule.js";
import { rule as rule0 } from "./validity/blood-pressure/pressure-arms.js";
import { rule as rule1 } from "./validity/blood-pressure/pressure-cuff.js";
import { rule as rule2 } from "./validity/blood-pressure/pressure-irregular-pulse.js";
import { rule as rule3 } from "./validity/blood-pressure/pressure-plausible.js";
import { rule as rule4 } from "./validity/blood-pressure/pressure-posture.js";
import { rule as rule5 } from "./validity/blood-pressure/pressure-readings.js";
import { rule as rule6 } from "./validity/blood-pressure/pressure-rest.js";
import { rule as rule7 } from "./validity/blood-pressure/pressure-spread.js";
import { rule as rule8 } from "./validity/blood-pressure/pressure-symptoms.js";
import { rule as rule9 } from "./validity/blood-pressure/pulse-agreement.js";
import { rule as rule10 } from "./validity/calibration/biological-control.js";
import { rule as rule11 } from "./validity/calibration/calibration-age.js";
import { rule as rule12 } from "./validity/calibration/calibration-recorded.js";
import { rule as rule13 } from "./validity/calibration/calibration-result.js";
import { rule as rule14 } from "./validity/calibration/gas-calibration.js";
import { rule as rule15 } from "./validity/calibration/gas-drift.js";
import { rule as rule16 } from "./validity/calibration/reference-check.js";
import { rule as rule17 } from "./validity/calibration/volume-calibration.js";
import { rule as rule18 } from "./validity/composition/dxa-contrast.js";
import { rule as rule19 } from "./validity/composition/dxa-mass-agreement.js";
import { rule as rule20 } from "./validity/composition/dxa-positioning.js";
import { rule as rule21 } from "./validity/composition/dxa-pregnancy.js";
import { rule as rule22 } from "./validity/composition/dxa-preparation.js";
import { rule as rule23 } from "./validity/composition/dxa-regions-add-up.js";
import { rule as rule24 } from "./validity/composition/dxa-scanner.js";
import { rule as rule25 } from "./validity/composition/girth-duplicates.js";
import { rule as rule26 } from "./validity/composition/impedance-conditions.js";
import { rule as rule27 } from "./validity/composition/impedance-implant.js";
import { rule as rule28 } from "./validity/composition/skinfold-duplicates.js";
import { rule as rule29 } from "./validity/composition/skinfold-method.js";
import { rule as rule30 } from "./validity/composition/skinfold-technical-error.js";
import { rule as rule31 } from "./validity/field/cycle-cadence.js";
import { rule as rule32 } from "./validity/field/estimate-medication.js";
import { rule as rule33 } from "./validity/field/exercise-pressure.js";
import { rule as rule34 } from "./validity/field/six-minute-walk-course.js";
import { rule as rule35 } from "./validity/gas/heart-rate-against-rest.js";
import { rule as rule36 } from "./validity/gas/oxygen-pulse-ceiling.js";
import { rule as rule37 } from "./validity/gas/oxygen-pulse-fall.js";
import { rule as rule38 } from "./validity/gas/ratio-course.js";
import { rule as rule39 } from "./validity/gas/resting-quotient.js";
import { rule as rule40 } from "./validity/gas/resting-steady.js";
import { rule as rule41 } from "./validity/gas/resting-uptake.js";
import { rule as rule42 } from "./validity/gas/room-recorded.js";
import { rule as rule43 } from "./validity/gas/uptake-for-work.js";
import { rule as rule44 } from "./validity/gas/uptake-work-slope.js";
import { rule as rule45 } from "./validity/gas/ventilatory-equivalents.js";
import { rule as rule46 } from "./validity/incremental/heart-rate-jump.js";
import { rule as rule47 } from "./validity/incremental/phases-in-series.js";
import { rule as rule48 } from "./validity/lungs/spirometry-conditions.js";
import { rule as rule49 } from "./validity/lungs/spirometry-manoeuvres.js";
import { rule as rule50 } from "./validity/lungs/spirometry-parts.js";
import { rule as rule51 } from "./validity/lungs/spirometry-repeatability.js";
import { rule as rule52 } from "./validity/preparation/resting-conditions-recorded.js";
import { rule as rule53 } from "./validity/preparation/resting-conditions.js";
import { rule as rule54 } from "./validity/screening/emergency-readiness.js";
import { rule as rule55 } from "./validity/screening/screening-age.js";
import { rule as rule56 } from "./validity/screening/screening-recorded.js";
import { rule as rule57 } from "./validity/screening/sign-off.js";
import { rule as rule58 } from "./validity/screening/tested-against-decision.js";
import { rule as rule59 } from "./validity/size/scale-clothing.js";
import { rule as rule60 } from "./validity/size/size-duplicates.js";
import { rule as rule61 } from "./validity/size/size-plausible.js";
import { rule as rule62 } from "./validity/size/waist-site.js";
import { rule as rule63 } from "./validity/strength/grip-conditions.js";
import { rule as rule64 } from "./validity/strength/grip-pain.js";
import { rule as rule65 } from "./validity/strength/grip-spread.js";
import { rule as rule66 } from "./validity/strength/grip-trials.js";
import { rule as rule67 } from "./validity/strength/grip-two-hands.js";
import { rule as rule68 } from "./validity/strength/jump-method.js";
import { rule as rule69 } from "./validity/strength/lift-machine.js";
import { rule as rule70 } from "./validity/strength/pull-agreement.js";
import { rule as rule71 } from "./validity/strength/pull-setup.js";
import { rule as rule72 } from "./validity/strength/push-up-conditions.js";
import { rule as rule73 } from "./validity/strength/reach-limb-sides.js";
import { rule as rule74 } from "./validity/strength/repetitions-far-from-maximum.js";
import { rule as rule75 } from "./validity/strength/stance-trials.js";

export const rules: readonly Rule[] = [
  rule0,
  rule1,
  rule2,
  rule3,
  rule4,
  rule5,
  rule6,
  rule7,
  rule8,
  rule9,
  rule10,
  rule11,
  rule12,
  rule13,
  rule14,
  rule15,
  rule16,
  rule17,
  rule18,
  rule19,
  rule20,
  rule21,
  rule22,
  rule23,
  rule24,
  rule25,
  rule26,
  rule27,
  rule28,
  rule29,
  rule30,
  rule31,
  rule32,
  rule33,
  rule34,
  rule35,
  rule36,
  rule37,
  rule38,
  rule39,
  rule40,
  rule41,
  rule42,
  rule43,
  rule44,
  rule45,
  rule46,
  rule47,
  rule48,
  rule49,
  rule50,
  rule51,
  rule52,
  rule53,
  rule54,
  rule55,
  rule56,
  rule57,
  rule58,
  rule59,
  rule60,
  rule61,
  rule62,
  rule63,
  rule64,
  rule65,
  rule66,
  rule67,
  rule68,
  rule69,
  rule70,
  rule71,
  rule72,
  rule73,
  rule74,
  rule75,
];
