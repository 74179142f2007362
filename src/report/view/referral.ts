/** One page for a physician: what was measured, what fell outside which published limit. No diagnosis, no advice. */
import {
  type Context,
  conditionName,
  entriesOf,
  entryOf,
  nameOf,
  quantityOf,
  sectionOf,
  told,
  toldSentence,
  valueWithUnit,
  withinSentence,
} from "./context.js";
import { leading } from "./summary.js";
import type { Fact, Frame, ReferralView } from "./types.js";

const SHOWN = [
  "body_mass_index",
  "systolic_pressure",
  "diastolic_pressure",
  "resting_heart_rate",
  "fev1",
  "fvc",
  "fev1_fvc",
  "vo2_peak_per_mass",
  "heart_rate_peak",
  "rer_peak",
  "vt1_vo2",
  "spo2_minimum",
] as const;

/** Conditions a physician reads a test by. */
const CONDITIONS = [
  "start_time",
  "mode",
  "protocol",
  "end_exertion",
  "stop",
  "day_fasted",
  "food",
  "caffeine",
  "exercise",
  "inspired_oxygen",
];

export function referral(context: Context, shared: Frame): ReferralView {
  const { speech, client, results } = context;
  const outside = outsideLimits(context);
  const medication = client.medication?.filter((one) => one !== "none") ?? [];
  const recorded = new Set(results.entries.map(sectionOf));
  const missing = (["blood_pressure", "lungs", "incremental", "lactate", "hypoxia"] as const).filter(
    (one) => !recorded.has(one),
  );
  const reason = leading(context).map((judgement) => toldSentence(context, judgement.because));
  return {
    ...shared,
    reason,
    hasReason: reason.length > 0,
    hasOutside: outside.length > 0,
    outside,
    measured: SHOWN.flatMap((id): Fact[] => {
      const quantity = quantityOf(context, id);
      return quantity ? [{ name: nameOf(context, id), value: valueWithUnit(context, quantity) }] : [];
    }),
    conditions: CONDITIONS.flatMap((name) => {
      const value = results.conditions[name];
      return value === undefined ? [] : [{ name: conditionName(context, name), value: told(context, value) }];
    }),
    medication:
      client.medication === undefined
        ? speech.say("referral.medication_not_stated")
        : medication.length === 0
          ? speech.say("referral.no_medication")
          : speech.list(medication.map((one) => told(context, one))),
    missing:
      missing.length === 0
        ? speech.say("referral.nothing_missing")
        : speech.list(missing.map((one) => withinSentence(context, speech.say(`sections.${one}`)))),
  };
}

/** Findings beyond the limits for referral, each with its limit and source; a verdict that no such finding explains. */
function outsideLimits(context: Context): Fact[] {
  const { speech } = context;
  const flags = entryOf(context, "referral_flags");
  const rows = flags?.kind === "table" ? flags.rows : [];
  const at = (key: string) => (flags?.kind === "table" ? flags.columns.findIndex((column) => column.key === key) : -1);
  const judged = rows.map((row) => {
    const cell = (key: string) => told(context, String(row[at(key)] ?? speech.say("report.absent")));
    return {
      name: cell("measure"),
      value: speech.say("referral.beyond", {
        found: cell("found"),
        limit: cell("limit"),
        source: cell("source"),
        urgency: cell("urgency"),
      }),
    };
  });
  const below = entriesOf(context, "quantity").flatMap((quantity): Fact[] =>
    (quantity.norms ?? []).flatMap((norm) =>
      norm.lowerLimit !== undefined && quantity.value < norm.lowerLimit
        ? [
            {
              name: nameOf(context, quantity.id),
              value: speech.say("referral.below_limit", {
                value: valueWithUnit(context, quantity),
                limit: speech.number(norm.lowerLimit, quantity.decimals),
                table: norm.table,
              }),
            },
          ]
        : [],
    ),
  );
  return [...judged, ...below];
}
