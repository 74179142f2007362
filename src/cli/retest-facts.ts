/** The numbers of one set of pairs as lines of text, for the terminal and for the page alike. */

import type { Limits } from "../compare/error/typical-error-limits.js";
import { unitOf } from "../kernel/names.js";
import type { Speech } from "../kernel/speech.js";
import type { OwnRetests } from "./own-retests.js";

export interface FactLine {
  readonly name: string;
  readonly value: string;
}

export function retestFacts({ report, unit, decimals }: OwnRetests, speech: Speech): readonly FactLine[] {
  if (report === undefined) return [];
  const say = (name: string, value: string): FactLine => ({ name: speech.say(`retests.${name}`), value });
  const tail = unitOf(speech, unit) === "" ? "" : ` ${unitOf(speech, unit)}`;
  // One digit more than a value has: these are properties of many values.
  const fine = (x: number) => speech.number(x, decimals + 1);
  const signed = (x: number) => speech.signed(x, decimals + 1);
  const limited = (value: string, { low, high }: Limits, write: (x: number) => string, unitTail: string) =>
    `${speech.say("retests.with_limits", { value, low: write(low), high: write(high) })}${unitTail}`;
  const correlation = (name: string, icc: OwnCorrelation | undefined) =>
    icc === undefined
      ? []
      : [
          say(
            name,
            limited(speech.number(icc.value, 2), icc, (x) => speech.number(x, 2), ""),
          ),
        ];
  return [
    say("n", speech.say("retests.n_value", { n: report.n, df: report.df })),
    say(
      "means",
      `${speech.say("retests.two", { test: fine(report.means.test), retest: fine(report.means.retest) })}${tail}`,
    ),
    say("between", `${fine(report.betweenSd)}${tail}`),
    say("typical", limited(fine(report.typicalError), report.typicalErrorLimits, fine, tail)),
    ...(report.percent === undefined ? [] : [say("cv", `${speech.number(report.percent, 1)} %`)]),
    ...correlation("agreement", report.agreement),
    ...correlation("consistency", report.consistency),
    say("shift", limited(signed(report.shift.mean), report.shift, signed, tail)),
    say(
      "limits",
      `${speech.say("report.interval", { low: signed(report.limitsOfAgreement.low), high: signed(report.limitsOfAgreement.high) })}${tail}`,
    ),
    say("detectable", `${fine(report.detectable)}${tail}`),
    ...(report.detectablePercent === undefined
      ? []
      : [
          say(
            "detectable_percent",
            speech.say("retests.up_down", {
              up: speech.signed(report.detectablePercent.up, 1),
              down: speech.signed(report.detectablePercent.down, 1),
            }),
          ),
        ]),
    say("rms", `${fine(report.rootMeanSquareSd)}${tail}`),
    say("least", `${fine(report.leastSignificantChange)}${tail}`),
    say("needed", String(report.pairsNeeded)),
  ];
}

type OwnCorrelation = Limits & { readonly value: number };

/** "From retests/vo2-peak.csv: fourteen adults …; days between the tests: 7". */
export function retestOrigin({ set }: OwnRetests, speech: Speech): string {
  return [
    set.file === undefined
      ? speech.say("retests.from_visits", { from: speech.told(set.from) })
      : speech.say("retests.from_file", { file: set.file, from: speech.told(set.from) }),
    ...(set.daysBetween === undefined ? [] : [speech.say("retests.days", { days: speech.told(set.daysBetween) })]),
    ...(set.conditions?.mode === undefined
      ? []
      : [speech.say("retests.mode", { mode: speech.told(set.conditions.mode) })]),
  ].join("; ");
}
