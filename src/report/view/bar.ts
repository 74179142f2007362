/**
 * A change as a line of print: the interval as a bar and the change as a dot over the zone that two tests differ by when
 * nothing has changed, in units of the error of one test; an arrow where the bar goes on, and no dot where it would lie
 * outside. The numbers stand beside it, so readers of speech skip it.
 */
import type { Change } from "../../kernel/measure.js";

/** Errors of one test to either side. */
const REACH = 6;
const HALF = 36;
/** 1.96 × √2: two tests of an unchanged person differ by less, 95 times in 100. */
const NOISE = 1.96 * Math.SQRT2;

/** "" where the error of one test is unknown or the two visits are not compared. */
export function changeBar({ change, low, high, typicalError, differs }: Change): string {
  if (typicalError === undefined || typicalError <= 0 || low === undefined || high === undefined || differs.length > 0)
    return "";
  const at = (value: number): number => {
    const errors = Math.min(REACH, Math.max(-REACH, value / typicalError));
    return Math.round((HALF + (HALF * errors) / REACH) * 10) / 10;
  };
  const zone = Math.round((HALF * NOISE * 10) / REACH) / 10;
  const beyond = Math.abs(change / typicalError) > REACH;
  const more = high / typicalError > REACH ? '<path class="bar-line" d="M70,2l4,3l-4,3"/>' : "";
  const less = low / typicalError < -REACH ? '<path class="bar-line" d="M4,2l-4,3l4,3"/>' : "";
  return [
    `<svg class="bar" viewBox="-1 0 ${2 * HALF + 2} 10" aria-hidden="true">`,
    `<path class="bar-zone" d="M${HALF - zone},0h${2 * zone}v10h${-2 * zone}z"/>`,
    `<path class="bar-zero" d="M${HALF},0v10"/>`,
    `<path class="bar-line" d="M${at(low)},5H${at(high)}"/>`,
    less,
    more,
    beyond ? "" : `<circle class="bar-dot" cx="${at(change)}" cy="5" r="2.2"/>`,
    "</svg>",
  ].join("");
}
