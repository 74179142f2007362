/**
 * What changed since earlier visits, and how sure that is. Works on recorded results: the printed digits.
 *
 *     occasions → each measure: gate → error → change and verdict → trend → explained changes → goals → false alarms
 */

import { quantityOf } from "../kernel/entries.js";
import type { Entry, Judgement, NotGiven, Section, Table } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { roundTo, toDecimals } from "../kernel/rounding.js";
import { type Judged, judgeChange, tellChange } from "./change.js";
import { falseAlarms } from "./error/false-alarms.js";
import { explained } from "./explained/explained.js";
import { progress } from "./goals.js";
import type { Known } from "./known.js";
import { anchorOf, type Occasion, occasionsOf, pooled } from "./occasions.js";
import { spokenDate } from "./spoken.js";
import { trendOf } from "./trend.js";

/** Facts about the visit or the plan, not findings about the client. */
const NOT_COMPARED: readonly Section[] = [
  "visit",
  "screening",
  "preparation",
  "validity",
  "change",
  "programme",
  "altitude",
];
const NOT_COMPARED_IDS = /_(max|energy)_predicted$|_least_change$|_technical_error$|_dose$/;

/** Entries to append to `now`. Earlier visits are the client's other visits up to this one, in any order; later ones are ignored. */
export function compare(now: Results, earlier: readonly Results[], known: Known): readonly Entry[] {
  const visits = [...earlier.filter((visit) => visit.client === now.client && before(visit, now)), now];
  const occasions = occasionsOf(visits);
  const current = occasions.find((occasion) => occasion.includes(now)) as Occasion;
  const past = occasions.slice(0, occasions.indexOf(current));
  const baseline = past.filter((o) => o.some((visit) => visit.purpose === "baseline")).at(-1) ?? past[0];
  const goals = known.targets.map((target, i) => progress(target, i + 1, baseline ?? current, current, known));
  if (baseline === undefined) return goals.filter((goal) => goal !== undefined);

  const previous = past.at(-1) as Occasion;
  const changes = changesBetween(baseline, current, measuresOf(now), known);
  const told: Judged[] = [];
  const untold: Judged[] = [];
  for (const change of changes) (worthTelling(change, known) ? told : untold).push(change);
  const sincePrevious =
    previous === baseline
      ? []
      : changesBetween(
          previous,
          current,
          told.filter((change) => change.primary || change.weighed !== undefined).map(({ is }) => is.measure),
          known,
        );
  const course = [...past, current];
  const trends = told.map(({ is }) => trendOf(is.measure, course, baseline, known));
  return [
    ...told.map((change) => tellChange(`change_${change.is.measure}`, change, known)),
    ...missing(known.primaryOutcomes, changes, anchorOf(baseline)),
    ...sincePrevious.map((change) => tellChange(idSince(change), change, known)),
    ...alarms(told),
    ...explained(baseline, current),
    ...others(untold),
    ...[...trends, ...goals].filter((entry) => entry !== undefined),
  ];
}

const before = (visit: Results, now: Results) =>
  visit.date < now.date || (visit.date === now.date && (visit.label ?? "") < (now.label ?? ""));

const measuresOf = (results: Results): readonly string[] =>
  results.entries.filter((entry) => entry.kind === "quantity" && isCompared(entry.id)).map((entry) => entry.id);

const asked = new Map<string, boolean>();
/** Whether a measure is compared at all; found once, because every visit asks. */
function isCompared(id: string): boolean {
  const info = measureInfo(id);
  if (info === undefined) return false;
  const known = asked.get(id);
  if (known !== undefined) return known;
  const compared = !NOT_COMPARED.includes(info.section) && !NOT_COMPARED_IDS.test(id);
  asked.set(id, compared);
  return compared;
}

/** The measures that both occasions hold, judged. */
function changesBetween(before: Occasion, now: Occasion, measures: readonly string[], known: Known): Judged[] {
  const changes: Judged[] = [];
  for (const measure of measures) {
    const was = pooled(before, measure);
    const is = was && pooled(now, measure);
    if (was && is) changes.push(judgeChange(was, is, known));
  }
  return changes;
}

/** A change with a verdict, or one the client or the goal asks about; the rest goes into one table. */
function worthTelling({ is, primary, weighed }: Judged, known: Known): boolean {
  if (weighed !== undefined || primary) return true;
  return measureInfo(is.measure)?.plain !== undefined || known.targets.some((target) => target.measure === is.measure);
}

const idSince = ({ was }: Judged): string => `change_${was.measure}_since_${was.visit.date.replaceAll("-", "_")}`;

/** Primary outcomes that one of the two visits lacks: declared beforehand, so their absence is said. */
const missing = (primary: readonly string[], found: readonly Judged[], baseline: Results): NotGiven[] =>
  primary
    .filter((id) => !found.some(({ is }) => is.measure === id))
    .map((id) => ({
      kind: "not given",
      id: `change_${id}`,
      because: `${measureInfo(id)?.title ?? id} was declared as a primary outcome but is not given ${
        quantityOf(baseline, id) ? "at this visit" : `at the baseline of ${spokenDate(baseline.date)}`
      }`,
    }));

function alarms(changes: readonly Judged[]): Judgement[] {
  const rest = changes.filter((change) => !change.primary && change.weighed !== undefined).length;
  if (rest === 0) return [];
  const primary = changes.some((change) => change.primary);
  const { atLeastOne, expected } = falseAlarms(rest);
  const others = primary
    ? `Besides the primary outcomes ${rest}`
    : `No primary outcome was declared beforehand; ${rest}`;
  return [
    {
      kind: "judgement",
      id: "change_false_alarms",
      verdict: `${rest} further comparison${rest === 1 ? "" : "s"}`,
      because: `${others} measure${rest === 1 ? " was" : "s were"} compared: about ${toDecimals(expected, 1)} of them would look changed by chance alone, and the chance of at least one such false alarm is about ${roundTo(100 * atLeastOne, 0)} in 100 if their errors are independent.`,
      rule: "false-alarms r1",
    },
  ];
}

/** Numbers of the changes that have no verdict and nobody asked about: shown, not judged. */
const others = (changes: readonly Judged[]): Table[] =>
  changes.length === 0
    ? []
    : [
        {
          kind: "table",
          id: "change_others",
          columns: [
            { key: "measure", title: "Measure" },
            { key: "before", title: "Before" },
            { key: "now", title: "Now" },
            { key: "change", title: "Change" },
            { key: "unit", title: "Unit" },
            { key: "verdict", title: "Verdict" },
            { key: "differs", title: "What differs" },
          ],
          rows: changes.map(({ was, is, change, verdict, comparable }) => [
            measureInfo(is.measure)?.title ?? is.measure,
            toDecimals(was.value, is.decimals),
            toDecimals(is.value, is.decimals),
            toDecimals(change, is.decimals),
            is.unit,
            verdict,
            comparable.differs.join("; "),
          ]),
          origin: { kind: "key", key: `results of ${changes[0]?.was.visit.date} and of this visit` },
          note: "Shown without a verdict: the error of these measures is not known here, or the two visits differ.",
        },
      ];
