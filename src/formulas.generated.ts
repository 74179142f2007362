/* Made by npm run generate from the modules. Do not edit. */
import type { AnyFormula } from "./kernel/formula.js";
import { info as info0 } from "./compare/error/chance-of-reaching.js";
import { info as info1 } from "./compare/error/chances.js";
import { info as info2 } from "./compare/error/change-interval.js";
import { info as info3 } from "./compare/error/detectable-change-percent.js";
import { info as info4 } from "./compare/error/detectable-change.js";
import { info as info5 } from "./compare/error/false-alarms.js";
import { info as info6 } from "./compare/error/intraclass-agreement.js";
import { info as info7 } from "./compare/error/intraclass-consistency.js";
import { info as info8 } from "./compare/error/least-significant-change.js";
import { info as info9 } from "./compare/error/limits-of-agreement.js";
import { info as info10 } from "./compare/error/mean-shift.js";
import { info as info11 } from "./compare/error/pairs-needed.js";
import { info as info12 } from "./compare/error/regression-to-the-mean.js";
import { info as info13 } from "./compare/error/root-mean-square-sd.js";
import { info as info14 } from "./compare/error/single-score-interval.js";
import { info as info15 } from "./compare/error/spread-from-percentiles.js";
import { info as info16 } from "./compare/error/tests-needed.js";
import { info as info17 } from "./compare/error/typical-error-limits.js";
import { info as info18 } from "./compare/error/typical-error-percent.js";
import { info as info19 } from "./compare/error/typical-error.js";
import { info as info20 } from "./compare/error/worthwhile-change.js";
import { info as info21 } from "./compare/explained/product-shares.js";
import { info as info22 } from "./derive/altitude/ascent-schedule.js";
import { info as info23 } from "./derive/altitude/equivalent-altitude.js";
import { info as info24 } from "./derive/altitude/inspired-oxygen-pressure.js";
import { info as info25 } from "./derive/altitude/lake-louise-score.js";
import { info as info26 } from "./derive/altitude/loaded-walk.js";
import { info as info27 } from "./derive/altitude/mountain-pressure.js";
import { info as info28 } from "./derive/altitude/uptake-at-altitude.js";
import { info as info29 } from "./derive/arithmetic/difference.js";
import { info as info30 } from "./derive/arithmetic/percent-of.js";
import { info as info31 } from "./derive/arithmetic/share-percent.js";
import { info as info32 } from "./derive/blood-pressure/mean-arterial-pressure.js";
import { info as info33 } from "./derive/blood-pressure/pressure-class.js";
import { info as info34 } from "./derive/blood-pressure/pulse-pressure.js";
import { info as info35 } from "./derive/blood-pressure/referral-limits.js";
import { info as info36 } from "./derive/blood-pressure/resting-average.js";
import { info as info37 } from "./derive/composition/body-fat-percent.js";
import { info as info38 } from "./derive/composition/density-four-site.js";
import { info as info39 } from "./derive/composition/density-seven-site-men.js";
import { info as info40 } from "./derive/composition/density-seven-site-women.js";
import { info as info41 } from "./derive/composition/density-three-site-men.js";
import { info as info42 } from "./derive/composition/density-three-site-women.js";
import { info as info43 } from "./derive/composition/dxa-least-change.js";
import { info as info44 } from "./derive/composition/fat-free-mass.js";
import { info as info45 } from "./derive/composition/fat-percent-brozek.js";
import { info as info46 } from "./derive/composition/fat-percent-siri.js";
import { info as info47 } from "./derive/composition/girth-fat-men.js";
import { info as info48 } from "./derive/composition/girth-fat-women.js";
import { info as info49 } from "./derive/composition/lean-over-bmi.js";
import { info as info50 } from "./derive/composition/mass-index.js";
import { info as info51 } from "./derive/composition/phase-angle.js";
import { info as info52 } from "./derive/composition/region-ratio.js";
import { info as info53 } from "./derive/composition/scan-mass.js";
import { info as info54 } from "./derive/composition/skinfold-sum.js";
import { info as info55 } from "./derive/composition/total-mass.js";
import { info as info56 } from "./derive/field/load-carriage-pandolf.js";
import { info as info57 } from "./derive/field/mile-and-half-run-george.js";
import { info as info58 } from "./derive/field/mile-jog-george.js";
import { info as info59 } from "./derive/field/mile-walk-kline.js";
import { info as info60 } from "./derive/field/percent-of-reference.js";
import { info as info61 } from "./derive/field/shuttle-run-leger.js";
import { info as info62 } from "./derive/field/shuttle-run-stickland-men.js";
import { info as info63 } from "./derive/field/shuttle-run-stickland-women.js";
import { info as info64 } from "./derive/field/six-minute-walk-chetta.js";
import { info as info65 } from "./derive/field/six-minute-walk-enright-men.js";
import { info as info66 } from "./derive/field/six-minute-walk-enright-women.js";
import { info as info67 } from "./derive/field/treadmill-time-balke-men.js";
import { info as info68 } from "./derive/field/treadmill-time-balke-women.js";
import { info as info69 } from "./derive/field/treadmill-time-bruce.js";
import { info as info70 } from "./derive/field/treadmill-time-foster.js";
import { info as info71 } from "./derive/field/treadmill-time-pollock.js";
import { info as info72 } from "./derive/field/twelve-minute-run-cooper.js";
import { info as info73 } from "./derive/field/two-km-walk-oja-men.js";
import { info as info74 } from "./derive/field/two-km-walk-oja-women.js";
import { info as info75 } from "./derive/gas/haldane.js";
import { info as info76 } from "./derive/gas/respiratory-exchange-ratio.js";
import { info as info77 } from "./derive/gas/vapour-pressure.js";
import { info as info78 } from "./derive/gas/volume-factor.js";
import { info as info79 } from "./derive/heart-rate-variability/ln-rmssd.js";
import { info as info80 } from "./derive/heart-rate-variability/mean-rr.js";
import { info as info81 } from "./derive/heart-rate-variability/normal-intervals.js";
import { info as info82 } from "./derive/heart-rate-variability/pnn50.js";
import { info as info83 } from "./derive/heart-rate-variability/rmssd.js";
import { info as info84 } from "./derive/heart-rate-variability/sdnn.js";
import { info as info85 } from "./derive/incremental/best-window.js";
import { info as info86 } from "./derive/incremental/effort-criteria.js";
import { info as info87 } from "./derive/incremental/gellish-2007.js";
import { info as info88 } from "./derive/incremental/half-expected-rise.js";
import { info as info89 } from "./derive/incremental/local-outlier.js";
import { info as info90 } from "./derive/incremental/maximality.js";
import { info as info91 } from "./derive/incremental/nes-2013.js";
import { info as info92 } from "./derive/incremental/oxygen-pulse.js";
import { info as info93 } from "./derive/incremental/peak-load.js";
import { info as info94 } from "./derive/incremental/phase-minutes.js";
import { info as info95 } from "./derive/incremental/sample-means.js";
import { info as info96 } from "./derive/incremental/tanaka-2001.js";
import { info as info97 } from "./derive/incremental/uptake-per-mass.js";
import { info as info98 } from "./derive/incremental/verification-difference.js";
import { info as info99 } from "./derive/indices/breathing-reserve.js";
import { info as info100 } from "./derive/indices/chronotropic-index.js";
import { info as info101 } from "./derive/indices/critical-rate.js";
import { info as info102 } from "./derive/indices/cycling-economy.js";
import { info as info103 } from "./derive/indices/energy-cost-of-running.js";
import { info as info104 } from "./derive/indices/exercise-pressure-response.js";
import { info as info105 } from "./derive/indices/fatmax.js";
import { info as info106 } from "./derive/indices/heart-rate-recovery.js";
import { info as info107 } from "./derive/indices/mvv-from-fev1.js";
import { info as info108 } from "./derive/indices/oxygen-cost-of-running.js";
import { info as info109 } from "./derive/indices/oxygen-uptake-efficiency-slope.js";
import { info as info110 } from "./derive/indices/saturation-fall.js";
import { info as info111 } from "./derive/indices/saturation-of-part.js";
import { info as info112 } from "./derive/indices/speed-at-vo2max.js";
import { info as info113 } from "./derive/indices/steady-stage.js";
import { info as info114 } from "./derive/indices/ventilation-vco2-lowest-sun.js";
import { info as info115 } from "./derive/indices/ventilation-vco2-lowest.js";
import { info as info116 } from "./derive/indices/ventilation-vco2-slope-habedank.js";
import { info as info117 } from "./derive/indices/ventilation-vco2-slope.js";
import { info as info118 } from "./derive/indices/vo2-work-slope.js";
import { info as info119 } from "./derive/lactate/baseline-plus.js";
import { info as info120 } from "./derive/lactate/definition-spread.js";
import { info as info121 } from "./derive/lactate/dmax.js";
import { info as info122 } from "./derive/lactate/fixed-lactate.js";
import { info as info123 } from "./derive/lactate/log-log.js";
import { info as info124 } from "./derive/lactate/modified-dmax.js";
import { info as info125 } from "./derive/lungs/flow-ratio.js";
import { info as info126 } from "./derive/lungs/largest-volume.js";
import { info as info127 } from "./derive/lungs/session-grade.js";
import { info as info128 } from "./derive/lungs/two-largest-apart.js";
import { info as info129 } from "./derive/mobility/mean-of-trials.js";
import { info as info130 } from "./derive/mobility/reach-composite.js";
import { info as info131 } from "./derive/mobility/reach-difference.js";
import { info as info132 } from "./derive/mobility/sit-and-reach-common-scale.js";
import { info as info133 } from "./derive/preparation/control-trend.js";
import { info as info134 } from "./derive/rest/bag-mean.js";
import { info as info135 } from "./derive/rest/brockway-1987.js";
import { info as info136 } from "./derive/rest/cunningham-1980.js";
import { info as info137 } from "./derive/rest/cunningham-1991.js";
import { info as info138 } from "./derive/rest/frayn-1983.js";
import { info as info139 } from "./derive/rest/harris-benedict-1919.js";
import { info as info140 } from "./derive/rest/harris-benedict-revised.js";
import { info as info141 } from "./derive/rest/hours-condition.js";
import { info as info142 } from "./derive/rest/jeukendrup-wallis-2005.js";
import { info as info143 } from "./derive/rest/lusk-1924.js";
import { info as info144 } from "./derive/rest/mifflin-st-jeor.js";
import { info as info145 } from "./derive/rest/owen.js";
import { info as info146 } from "./derive/rest/per-mass.js";
import { info as info147 } from "./derive/rest/percent-of-predicted.js";
import { info as info148 } from "./derive/rest/peronnet-massicotte-1991.js";
import { info as info149 } from "./derive/rest/quotient-band.js";
import { info as info150 } from "./derive/rest/schofield.js";
import { info as info151 } from "./derive/rest/steady-window.js";
import { info as info152 } from "./derive/rest/tidal-volume.js";
import { info as info153 } from "./derive/rest/weir-1949.js";
import { info as info154 } from "./derive/rest/weir-short.js";
import { info as info155 } from "./derive/screening/pre-participation.js";
import { info as info156 } from "./derive/screening/test-deferral.js";
import { info as info157 } from "./derive/size/body-mass-index.js";
import { info as info158 } from "./derive/size/duplicate-readings.js";
import { info as info159 } from "./derive/size/relative-technical-error.js";
import { info as info160 } from "./derive/size/technical-error.js";
import { info as info161 } from "./derive/size/waist-to-height.js";
import { info as info162 } from "./derive/size/waist-to-hip.js";
import { info as info163 } from "./derive/strength/best-trial.js";
import { info as info164 } from "./derive/strength/hand-difference.js";
import { info as info165 } from "./derive/strength/jump-height-flight-time.js";
import { info as info166 } from "./derive/strength/jump-mean-power-harman.js";
import { info as info167 } from "./derive/strength/jump-power-harman.js";
import { info as info168 } from "./derive/strength/jump-power-sayers.js";
import { info as info169 } from "./derive/strength/load-over-mass.js";
import { info as info170 } from "./derive/strength/older-adult-limits.js";
import { info as info171 } from "./derive/strength/one-rm-brzycki.js";
import { info as info172 } from "./derive/strength/one-rm-epley.js";
import { info as info173 } from "./derive/strength/one-rm-lombardi.js";
import { info as info174 } from "./derive/strength/one-rm-mayhew.js";
import { info as info175 } from "./derive/strength/one-rm-oconner.js";
import { info as info176 } from "./derive/strength/one-rm-span.js";
import { info as info177 } from "./derive/strength/one-rm-wathan.js";
import { info as info178 } from "./derive/strength/oxygen-cost-stepping.js";
import { info as info179 } from "./derive/strength/step-vertical-metres.js";
import { info as info180 } from "./derive/strength/step-vertical-rate.js";
import { info as info181 } from "./derive/submaximal/cycle-extrapolation.js";
import { info as info182 } from "./derive/submaximal/cycle-peak-friend.js";
import { info as info183 } from "./derive/submaximal/cycle-power-storer-men.js";
import { info as info184 } from "./derive/submaximal/cycle-power-storer-women.js";
import { info as info185 } from "./derive/submaximal/cycle-single-astrand.js";
import { info as info186 } from "./derive/submaximal/cycle-stages.js";
import { info as info187 } from "./derive/submaximal/oxygen-cost-cycling.js";
import { info as info188 } from "./derive/submaximal/oxygen-cost-running.js";
import { info as info189 } from "./derive/submaximal/oxygen-cost-walking.js";
import { info as info190 } from "./derive/submaximal/treadmill-jog-george.js";
import { info as info191 } from "./derive/submaximal/treadmill-jog-vehrs.js";
import { info as info192 } from "./derive/submaximal/treadmill-peak-friend.js";
import { info as info193 } from "./derive/submaximal/treadmill-questionnaire-george.js";
import { info as info194 } from "./derive/submaximal/treadmill-walk-ebbeling.js";
import { info as info195 } from "./derive/submaximal/uptake-over-mass.js";
import { info as info196 } from "./derive/thresholds/combined-threshold.js";
import { info as info197 } from "./derive/thresholds/end-tidal-co2.js";
import { info as info198 } from "./derive/thresholds/end-tidal-o2.js";
import { info as info199 } from "./derive/thresholds/excess-co2.js";
import { info as info200 } from "./derive/thresholds/time-into-phase.js";
import { info as info201 } from "./derive/thresholds/v-slope-lines.js";
import { info as info202 } from "./derive/thresholds/v-slope.js";
import { info as info203 } from "./derive/thresholds/value-at-threshold.js";
import { info as info204 } from "./derive/thresholds/ventilation-on-co2.js";
import { info as info205 } from "./derive/thresholds/ventilatory-equivalent-co2.js";
import { info as info206 } from "./derive/thresholds/ventilatory-equivalent-o2.js";
import { info as info207 } from "./norms/hansen-1984.js";
import { info as info208 } from "./norms/lms-value.js";
import { info as info209 } from "./norms/lms-z.js";
import { info as info210 } from "./norms/percentile-linear.js";
import { info as info211 } from "./norms/ship-2009.js";
import { info as info212 } from "./norms/standard-score.js";
import { info as info213 } from "./plan/intensity/age-predicted-maximum.js";
import { info as info214 } from "./plan/intensity/heart-rate-reserve.js";
import { info as info215 } from "./plan/intensity/loaded-speed-for-uptake.js";
import { info as info216 } from "./plan/intensity/power-for-uptake.js";
import { info as info217 } from "./plan/intensity/running-speed-for-uptake.js";
import { info as info218 } from "./plan/intensity/separable-thresholds.js";
import { info as info219 } from "./plan/intensity/uptake-reserve.js";
import { info as info220 } from "./plan/intensity/walking-speed-for-uptake.js";
import { info as info221 } from "./plan/load/session-load.js";
import { info as info222 } from "./plan/load/training-impulse.js";
import { info as info223 } from "./plan/load/weekly-monotony.js";
import { info as info224 } from "./plan/load/weekly-strain.js";
import { info as info225 } from "./plan/strength/next-load.js";
import { info as info226 } from "./plan/weeks/progression.js";
import { info as info227 } from "./plan/weeks/taper.js";

export const formulas: readonly AnyFormula[] = [
  info0,
  info1,
  info2,
  info3,
  info4,
  info5,
  info6,
  info7,
  info8,
  info9,
  info10,
  info11,
  info12,
  info13,
  info14,
  info15,
  info16,
  info17,
  info18,
  info19,
  info20,
  info21,
  info22,
  info23,
  info24,
  info25,
  info26,
  info27,
  info28,
  info29,
  info30,
  info31,
  info32,
  info33,
  info34,
  info35,
  info36,
  info37,
  info38,
  info39,
  info40,
  info41,
  info42,
  info43,
  info44,
  info45,
  info46,
  info47,
  info48,
  info49,
  info50,
  info51,
  info52,
  info53,
  info54,
  info55,
  info56,
  info57,
  info58,
  info59,
  info60,
  info61,
  info62,
  info63,
  info64,
  info65,
  info66,
  info67,
  info68,
  info69,
  info70,
  info71,
  info72,
  info73,
  info74,
  info75,
  info76,
  info77,
  info78,
  info79,
  info80,
  info81,
  info82,
  info83,
  info84,
  info85,
  info86,
  info87,
  info88,
  info89,
  info90,
  info91,
  info92,
  info93,
  info94,
  info95,
  info96,
  info97,
  info98,
  info99,
  info100,
  info101,
  info102,
  info103,
  info104,
  info105,
  info106,
  info107,
  info108,
  info109,
  info110,
  info111,
  info112,
  info113,
  info114,
  info115,
  info116,
  info117,
  info118,
  info119,
  info120,
  info121,
  info122,
  info123,
  info124,
  info125,
  info126,
  info127,
  info128,
  info129,
  info130,
  info131,
  info132,
  info133,
  info134,
  info135,
  info136,
  info137,
  info138,
  info139,
  info140,
  info141,
  info142,
  info143,
  info144,
  info145,
  info146,
  info147,
  info148,
  info149,
  info150,
  info151,
  info152,
  info153,
  info154,
  info155,
  info156,
  info157,
  info158,
  info159,
  info160,
  info161,
  info162,
  info163,
  info164,
  info165,
  info166,
  info167,
  info168,
  info169,
  info170,
  info171,
  info172,
  info173,
  info174,
  info175,
  info176,
  info177,
  info178,
  info179,
  info180,
  info181,
  info182,
  info183,
  info184,
  info185,
  info186,
  info187,
  info188,
  info189,
  info190,
  info191,
  info192,
  info193,
  info194,
  info195,
  info196,
  info197,
  info198,
  info199,
  info200,
  info201,
  info202,
  info203,
  info204,
  info205,
  info206,
  info207,
  info208,
  info209,
  info210,
  info211,
  info212,
  info213,
  info214,
  info215,
  info216,
  info217,
  info218,
  info219,
  info220,
  info221,
  info222,
  info223,
  info224,
  info225,
  info226,
  info227,
];
