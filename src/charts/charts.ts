/** Every chart, in the order a report prints them. A new chart is a file beside this one and a line here. */
import type { ChartInput, Figure } from "../kernel/figure.js";
import { altitudeCurve } from "./altitude-curve.js";
import { beforeAndAfter } from "./before-and-after.js";
import { bloodPressure } from "./blood-pressure.js";
import { bodyRegions } from "./body-regions.js";
import { changeFigure } from "./change-figure.js";
import { lactateCurve } from "./lactate-curve.js";
import { normStrip } from "./norm-strip.js";
import { breathingPattern } from "./panels/breathing-pattern.js";
import { endTidal } from "./panels/end-tidal.js";
import { equivalents } from "./panels/equivalents.js";
import { exchangeRatio } from "./panels/exchange-ratio.js";
import { heart } from "./panels/heart.js";
import { uptakeOutput } from "./panels/uptake-output.js";
import { vSlope } from "./panels/v-slope.js";
import { ventilation } from "./panels/ventilation.js";
import { ventilationOutput } from "./panels/ventilation-output.js";
import { restingTrace } from "./resting-trace.js";
import { stageFigure } from "./stage-figure.js";
import { trends } from "./trends.js";
import { weeklyLoad } from "./weekly-load.js";

const CHARTS = [
  normStrip,
  bloodPressure,
  restingTrace,
  bodyRegions,
  stageFigure,
  uptakeOutput,
  heart,
  vSlope,
  equivalents,
  ventilation,
  ventilationOutput,
  endTidal,
  exchangeRatio,
  breathingPattern,
  lactateCurve,
  changeFigure,
  beforeAndAfter,
  trends,
  weeklyLoad,
  altitudeCurve,
] as const;

export const drawCharts = (input: ChartInput): readonly Figure[] => CHARTS.flatMap((chart) => chart(input));
