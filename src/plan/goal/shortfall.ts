/** What the goal asks for beside what was measured, with the error of the measurement: shown as a gap, not as a verdict on the person. */
import { entryOf } from "../../kernel/entries.js";
import type { Target } from "../../kernel/generated/client.js";
import type { EventProfile } from "../../kernel/generated/event-profile.js";
import type { Cell, Quantity } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Results } from "../../kernel/results.js";
import { compareAtDecimals, toDecimals } from "../../kernel/rounding.js";

interface Asked {
  readonly measure: string;
  readonly at_least?: number;
  readonly at_most?: number;
  readonly from: string;
}

export function writeShortfall(
  book: Notebook,
  results: Results,
  targets: readonly Target[],
  profile: EventProfile | undefined,
  /** An id that client.yaml names and nobody knows. */
  unknown?: string,
): void {
  const asked: Asked[] = [
    ...targets.map((target) => ({ ...target, from: target.from ?? "client.yaml goals.targets" })),
    ...(profile?.demands ?? []).filter((demand) => demand.sex === undefined || demand.sex === results.sex),
  ];
  const rows = asked.flatMap((one) => {
    const row = rowOf(one, results);
    return row ? [row] : [];
  });
  const missing = unknown === undefined ? "" : `There is no event profile ${unknown}, so nothing is held against it. `;
  if (rows.length === 0) {
    if (missing !== "") book.withhold("demand_shortfall", `there is no event profile ${unknown}`);
    return;
  }
  book.table(
    "demand_shortfall",
    [
      { key: "measure", title: "Measure" },
      { key: "unit", title: "Unit" },
      { key: "needed", title: "Asked for" },
      { key: "measured", title: "Measured" },
      { key: "interval", title: "95 % interval" },
      { key: "short", title: "Short by" },
      { key: "standing", title: "Standing" },
      { key: "from", title: "Asked by" },
    ],
    rows,
    { id: "demand-shortfall", revision: 2 },
    profile ? [{ name: "profile", value: profile.id, unit: "" }] : [],
    `${missing}${profile ? `${profile.title}. ${profile.notes} ` : ""}A limit without a published source is marked as a convention. To meet the limits does not promise the goal, and to miss one does not exclude it.`,
  );
}

function rowOf(one: Asked, results: Results): Cell[] | undefined {
  const info = measureInfo(one.measure);
  if (info?.decimals === undefined || (one.at_least === undefined && one.at_most === undefined)) return undefined;
  const decimals = info.decimals;
  const text = (value: number) => toDecimals(value, decimals);
  const needed = [
    one.at_least === undefined ? "" : `at least ${text(one.at_least)}`,
    one.at_most === undefined ? "" : `at most ${text(one.at_most)}`,
  ]
    .filter((part) => part !== "")
    .join(", ");
  const entry = entryOf(results, one.measure);
  if (entry?.kind === "not given")
    return [info.title, info.unit ?? "", needed, null, null, null, `not given: ${entry.because}`, one.from];
  if (entry?.kind !== "quantity")
    return [info.title, info.unit ?? "", needed, null, null, null, "not measured at this visit", one.from];
  const { half, words } = errorOf(entry, results);
  const low = half === undefined ? entry.value : entry.value - half;
  const high = half === undefined ? entry.value : entry.value + half;
  const short =
    one.at_least !== undefined && compareAtDecimals(entry.value, one.at_least, decimals) < 0
      ? one.at_least - entry.value
      : one.at_most !== undefined && compareAtDecimals(entry.value, one.at_most, decimals) > 0
        ? entry.value - one.at_most
        : 0;
  const limit = one.at_least ?? (one.at_most as number);
  const inside = half !== undefined && limit > low && limit < high;
  const standing = inside ? "the limit lies within the error of the test" : short > 0 ? words.short : words.met;
  return [
    info.title,
    info.unit ?? "",
    needed,
    text(entry.value),
    half === undefined ? "error not known" : `${text(low)} to ${text(high)}`,
    short > 0 ? text(short) : "0",
    standing,
    one.from,
  ];
}

/** Where a value stands beyond the error that is known of it. */
const BETWEEN_TESTS = { short: "short, beyond the error of the test", met: "met, beyond the error of the test" };
const WITHIN_TEST = {
  short: "short, beyond the noise within this test; tests on different days differ by more",
  met: "met, beyond the noise within this test; tests on different days differ by more",
};
const NOT_KNOWN = { short: "short; error not known", met: "met; error not known" };

/**
 * Half width of the 95 % interval of one test. The typical error a change was judged with goes first: an interval of
 * the test's own (breath noise, a fit) leaves out that tests on different days differ by more.
 */
function errorOf(quantity: Quantity, results: Results): { readonly half?: number; readonly words: typeof NOT_KNOWN } {
  const { error } = quantity;
  const change = entryOf(results, `change_${quantity.id}`);
  const typical = (change?.kind === "change" ? change.typicalError : undefined) ?? error?.typical;
  if (typical !== undefined) return { half: 1.96 * typical, words: BETWEEN_TESTS };
  if (error?.low !== undefined && error.high !== undefined)
    return { half: (error.high - error.low) / 2, words: WITHIN_TEST };
  return { words: NOT_KNOWN };
}
