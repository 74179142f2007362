/**
 * What changed since earlier visits, and how sure that is. Works on recorded results: the printed digits.
 *
 *     occasions → each measure: gate → error → change and verdict → trend → explained changes → goals → false alarms
 */

import { quantityOf } from "../kernel/entries.js";
import type { Change, Entry, Judgement, NotGiven, Section, Table } from "../kernel/measure.js";
import { measureInfo } from "../kernel/measures.js";
import type { Results } from "../kernel/results.js";
import { roundTo, toDecimals } from "../kernel/rounding.js";
import { changeBetween } from "./change.js";
import { falseAlarms } from "./error/false-alarms.js";
import { explained } from "./explained/explained.js";
import { progress } from "./goals.js";
import type { Known } from "./known.js";
import { anchorOf, type Occasion, occasionsOf, type Pooled, pooled } from "./occasions.js";
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
  const pairs = measuresOf(now).map((id) => ({ id, was: pooled(baseline, id), is: pooled(current, id) }));
  const found = pairs.filter((p): p is Both => p.was !== undefined && p.is !== undefined);
  const changes = found.map(({ id, was, is }) => changeBetween(`change_${id}`, id, was, is, known));
  const told = changes.filter((change) => worthTelling(change, known));
  const sincePrevious =
    previous === baseline
      ? []
      : told
          .filter((change) => change.primary || change.low !== undefined)
          .flatMap((change) => since(change.measure, previous, current, known));
  const trends = told.map((change) => trendOf(change.measure, occasions.slice(0, past.length + 1), baseline, known));
  return [
    ...told,
    ...missing(known.primaryOutcomes, found, anchorOf(baseline)),
    ...sincePrevious,
    ...alarms(told),
    ...explained(baseline, current),
    ...others(changes.filter((change) => !told.includes(change))),
    ...[...trends, ...goals].filter((entry) => entry !== undefined),
  ];
}

interface Both {
  readonly id: string;
  readonly was: Pooled;
  readonly is: Pooled;
}

const before = (visit: Results, now: Results) =>
  visit.date < now.date || (visit.date === now.date && (visit.label ?? "") < (now.label ?? ""));

const measuresOf = (results: Results): readonly string[] =>
  results.entries.flatMap((entry) => {
    const info = measureInfo(entry.id);
    const compared = entry.kind === "quantity" && info && !NOT_COMPARED.includes(info.section);
    return compared && !NOT_COMPARED_IDS.test(entry.id) ? [entry.id] : [];
  });

/** A change with a verdict, or one the client or the goal asks about; the rest goes into one table. */
function worthTelling(change: Change, known: Known): boolean {
  if (change.verdict !== "error not known" && change.verdict !== "not comparable") return true;
  const info = measureInfo(change.measure);
  return (
    change.primary || info?.plain !== undefined || known.targets.some((target) => target.measure === change.measure)
  );
}

function since(measure: string, previous: Occasion, current: Occasion, known: Known): Change[] {
  const [was, is] = [pooled(previous, measure), pooled(current, measure)];
  if (!was || !is) return [];
  return [changeBetween(`change_${measure}_since_${was.visit.date.replaceAll("-", "_")}`, measure, was, is, known)];
}

/** Primary outcomes that one of the two visits lacks: declared beforehand, so their absence is said. */
const missing = (primary: readonly string[], found: readonly Both[], baseline: Results): NotGiven[] =>
  primary
    .filter((id) => !found.some((pair) => pair.id === id))
    .map((id) => ({
      kind: "not given",
      id: `change_${id}`,
      because: `${measureInfo(id)?.title ?? id} was declared as a primary outcome but is not given ${
        quantityOf(baseline, id) ? "at this visit" : `at the baseline of ${spokenDate(baseline.date)}`
      }`,
    }));

function alarms(changes: readonly Change[]): Judgement[] {
  const rest = changes.filter((change) => !change.primary && change.low !== undefined).length;
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
const others = (changes: readonly Change[]): Table[] =>
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
          rows: changes.map((c) => [
            measureInfo(c.measure)?.title ?? c.measure,
            toDecimals(c.before, c.decimals),
            toDecimals(c.now, c.decimals),
            toDecimals(c.change, c.decimals),
            c.unit,
            c.verdict,
            c.differs.join("; "),
          ]),
          origin: { kind: "key", key: `results of ${changes[0]?.since} and of this visit` },
          note: "Shown without a verdict: the error of these measures is not known here, or the two visits differ.",
        },
      ];
