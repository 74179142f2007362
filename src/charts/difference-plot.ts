import type { Datum, Figure } from "../kernel/figure.js";
import { nameOf, unitOf, unitTail } from "../kernel/names.js";
import type { Speech } from "../kernel/speech.js";
import { framed, layer, x, y } from "./parts.js";

export interface DifferencePlotInput {
  /** Unique on the page, kebab-case. */
  readonly name: string;
  readonly measure: string;
  readonly unit: string;
  readonly decimals: number;
  readonly pairs: readonly (readonly [test: number, retest: number])[];
  readonly meanShift: number;
  readonly limits: { readonly low: number; readonly high: number };
  /** Pairs to look at, by their place in the set (0-based). */
  readonly suspects: readonly number[];
  readonly speech: Speech;
}

/**
 * Each pair's difference against its mean, with the mean difference and the limits of agreement as lines: shows whether
 * the error grows with the value, whether the retest was shifted, and which pair is a slip of the pen (hollow, numbered).
 * Bland JM, Altman DG (1986), Lancet 327:307–310.
 */
export function differencePlot(input: DifferencePlotInput): Figure {
  const { pairs, decimals, unit, limits, meanShift, speech, measure } = input;
  const points = pairs.map(
    ([test, retest], i): Datum => ({ x: (test + retest) / 2, y: retest - test, name: String(i + 1) }),
  );
  const left = Math.min(...points.map((p) => Number(p.x)));
  const right = Math.max(...points.map((p) => Number(p.x)));
  const odd = (i: number) => input.suspects.includes(i);
  const text = (value: number) => speech.signed(value, decimals + 1);
  const line = (at: number): Datum => ({ y: at, name: text(at) });
  const lines = (data: string, style: string) => layer(data, "rule", style, { y: y("y", null) });
  const ends = (data: string) =>
    layer(data, "text", "name", { x: { value: 310 }, y: y("y", null), text: { field: "name", type: "nominal" } });
  const title = inUnit(speech.say("retests.difference_axis"), unitOf(speech, unit));
  const across = { scale: { padding: 8 } };
  return {
    name: input.name,
    section: "change",
    size: "wide",
    title: speech.say("retests.plot_title", {
      low: text(limits.low),
      high: `${text(limits.high)}${unitTail(speech, unit)}`,
    }),
    alt: speech.say("retests.plot_alt", {
      count: pairs.length,
      measure: nameOf(speech, measure),
      shift: `${text(meanShift)}${unitTail(speech, unit)}`,
      low: text(limits.low),
      high: text(limits.high),
      from: speech.number(left, decimals),
      to: speech.number(right, decimals),
    }),
    ...framed("wide", [
      lines("zero", "zero"),
      lines("shift", "error-thin"),
      lines("limits", "worthwhile"),
      layer("points", "point", "mark", {
        x: x("x", inUnit(speech.say("retests.mean_axis"), unitOf(speech, unit)), across),
        y: y("y", title),
      }),
      layer("suspects", "point", "mark-earlier", { x: x("x", null, across), y: y("y", null) }),
      layer("suspects", "text", "name", {
        x: x("x", null, across),
        y: y("y", null),
        text: { field: "name", type: "nominal" },
      }),
      ends("shift"),
      ends("limits"),
    ]),
    data: {
      points: points.filter((_, i) => !odd(i)),
      suspects: points.filter((_, i) => odd(i)),
      zero: [{ y: 0 }],
      shift: [line(meanShift)],
      limits: [line(limits.low), line(limits.high)],
    },
    table: {
      columns: [
        { key: "pair", title: speech.say("retests.pair"), decimals: 0 },
        { key: "test", title: speech.say("retests.test"), unit, decimals },
        { key: "retest", title: speech.say("retests.retest"), unit, decimals },
        { key: "mean", title: speech.say("retests.mean"), unit, decimals: decimals + 1 },
        { key: "difference", title: speech.say("retests.difference"), unit, decimals },
      ],
      rows: pairs.map(([test, retest], i) => [i + 1, test, retest, (test + retest) / 2, retest - test]),
    },
  };
}

const inUnit = (title: string, unit: string): string => (unit === "" ? title : `${title} (${unit})`);
