/* Made by npm run generate from the modules. Do not edit. */
import type { AnyFormula } from "./kernel/formula.js";
import { info as info0 } from "./compare/error/chances.js";
import { info as info1 } from "./compare/error/change-interval.js";
import { info as info2 } from "./compare/error/detectable-change-percent.js";
import { info as info3 } from "./compare/error/detectable-change.js";
import { info as info4 } from "./compare/error/false-alarms.js";
import { info as info5 } from "./compare/error/intraclass-agreement.js";
import { info as info6 } from "./compare/error/intraclass-consistency.js";
import { info as info7 } from "./compare/error/least-significant-change.js";
import { info as info8 } from "./compare/error/limits-of-agreement.js";
import { info as info9 } from "./compare/error/mean-shift.js";
import { info as info10 } from "./compare/error/pairs-needed.js";
import { info as info11 } from "./compare/error/pooled-uptake-error.js";
import { info as info12 } from "./compare/error/regression-to-the-mean.js";
import { info as info13 } from "./compare/error/reliable-change.js";
import { info as info14 } from "./compare/error/root-mean-square-sd.js";
import { info as info15 } from "./compare/error/single-score-interval.js";
import { info as info16 } from "./compare/error/tests-needed.js";
import { info as info17 } from "./compare/error/typical-error-limits.js";
import { info as info18 } from "./compare/error/typical-error-percent.js";
import { info as info19 } from "./compare/error/typical-error.js";
import { info as info20 } from "./compare/error/worthwhile-change.js";
import { info as info21 } from "./derive/altitude/ascent-schedule.js";
import { info as info22 } from "./derive/altitude/equivalent-altitude.js";
import { info as info23 } from "./derive/altitude/inspired-oxygen-pressure.js";
import { info as info24 } from "./derive/altitude/lake-louise-score.js";
import { info as info25 } from "./derive/altitude/loaded-walk.js";
import { info as info26 } from "./derive/altitude/mountain-pressure.js";
import { info as info27 } from "./derive/altitude/standard-pressure.js";
import { info as info28 } from "./derive/altitude/uptake-at-altitude.js";
import { info as info29 } from "./derive/blood-pressure/mean-arterial-pressure.js";
import { info as info30 } from "./derive/blood-pressure/pressure-class.js";
import { info as info31 } from "./derive/blood-pressure/pulse-pressure.js";
import { info as info32 } from "./derive/blood-pressure/referral-limits.js";
import { info as info33 } from "./derive/blood-pressure/resting-average.js";
import { info as info34 } from "./derive/rest/brockway-1987.js";
import { info as info35 } from "./derive/rest/cunningham-1980.js";
import { info as info36 } from "./derive/rest/cunningham-1991.js";
import { info as info37 } from "./derive/rest/harris-benedict-1919.js";
import { info as info38 } from "./derive/rest/harris-benedict-revised.js";
import { info as info39 } from "./derive/rest/mifflin-st-jeor.js";
import { info as info40 } from "./derive/rest/owen.js";
import { info as info41 } from "./derive/rest/schofield.js";
import { info as info42 } from "./derive/rest/weir-1949.js";
import { info as info43 } from "./derive/rest/weir-short.js";
import { info as info44 } from "./derive/size/body-mass-index.js";
import { info as info45 } from "./derive/size/duplicate-readings.js";
import { info as info46 } from "./derive/size/relative-technical-error.js";
import { info as info47 } from "./derive/size/technical-error.js";
import { info as info48 } from "./derive/size/waist-to-height.js";
import { info as info49 } from "./derive/size/waist-to-hip.js";

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
];
