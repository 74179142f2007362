/** How measures and units are named to a reader, in the language of a speech: one place for charts, report and command line. */
import type { Quantity } from "./measure.js";
import { measureInfo } from "./measures.js";
import type { Speech } from "./speech.js";

type Find = Pick<Speech, "find">;

/** English name of a measure, as the trade says it; an id of no measure in words. */
export const titleOf = (id: string): string => measureInfo(id)?.title ?? id.replaceAll("_", " ");

/** Name of an entry, measure or finding of a comparison, in the language. */
export const nameOf = (speech: Pick<Speech, "find" | "say">, id: string): string =>
  knownName(speech, id) ?? comparedName(speech, id) ?? titleOf(id);

/** The name a client is shown. */
export const plainNameOf = (speech: Pick<Speech, "find" | "say">, id: string): string =>
  speech.find(`plain.${id}.name`) ?? measureInfo(id)?.plain?.name ?? nameOf(speech, id);

const knownName = (speech: Find, id: string): string | undefined =>
  speech.find(`measures.${id}`) ?? measureInfo(id)?.title;

/** Names of what comparing visits writes: ids made of a kind and a measure (goal_vo2_peak_per_mass_1). */
function comparedName(speech: Pick<Speech, "find" | "say">, id: string): string | undefined {
  const [, kind, measure = ""] = /^(goal|explained|trend|change)_(.+?)(?:_\d+)?$/.exec(id) ?? [];
  if (kind === undefined) return undefined;
  const own = speech.find(`compared.${measure}`);
  if (kind === "change" && own !== undefined) return own;
  const name = knownName(speech, measure);
  return name === undefined ? undefined : speech.say(`compared.${kind}`, { measure: name });
}

/** A unit as it is printed: a ratio has none, "1/min" reads "per min". */
export const unitOf = (speech: Find, unit: string): string => speech.find(`units.${unit}`) ?? unit;

/** The unit of a difference: 30 % less 27 % is 3 points, not 3 %. Other units serve values and differences alike. */
export const differenceUnit = (speech: Find, unit: string): string =>
  speech.find(`difference_units.${unit}`) ?? unitOf(speech, unit);

/** What follows a number: its unit after a space that does not break, or nothing. */
export const unitTail = (speech: Find, unit: string): string => {
  const text = unitOf(speech, unit);
  return text === "" ? "" : `\u00a0${text}`;
};

/** "41.8 mL/kg/min", with the digits the measurement has. */
export const withUnit = (
  speech: Pick<Speech, "find" | "number">,
  at: Pick<Quantity, "value" | "decimals" | "unit">,
): string => `${speech.number(at.value, at.decimals)}${unitTail(speech, at.unit)}`;

/** "+3.2 points": a difference with its sign. */
export const signedWithUnit = (
  speech: Pick<Speech, "find" | "signed">,
  at: { readonly change: number; readonly decimals: number; readonly unit: string },
): string => `${speech.signed(at.change, at.decimals)}\u00a0${differenceUnit(speech, at.unit)}`.trim();
