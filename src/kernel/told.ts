/**
 * Recorded sentences in another language. A results file is written in English and stays so; the English sentence, with
 * {places} for what differs from visit to visit, is the key to the other language's. What stands in a place is told the
 * same way: a name of a measure, a number with the language's decimal sign, a date, a list, another sentence. A place
 * written {=name} holds what somebody typed and stays as it is; one written {~name} holds a citation and stays English.
 *
 * A text that no sentence fits stays English and can be marked; nothing is guessed from parts of words.
 */
import { catalogue } from "./measures.js";

/** English sentences with their places → the same in the language. */
export type Sentences = Readonly<Record<string, string>>;

/** What the teller needs of a language beside its sentences. */
export interface Tongue {
  readonly decimalSign: string;
  find(path: string): string | undefined;
  date(iso: string): string;
  list(items: readonly string[]): string;
}
/** `mark` wraps what stays English. */
export type Teller = (text: string, mark?: (english: string) => string) => string;

type Part = string | number;
/** A sentence with places, as it is kept until a text may be it. */
interface Kept {
  readonly english: string;
  readonly told: string;
  /** Literal text before the first place, its first letter small, and after the last one. */
  readonly head: string;
  readonly tail: string;
  pattern?: Pattern;
}
interface Pattern {
  /** Literal text before, between and after the places. */
  readonly english: readonly string[];
  readonly names: readonly string[];
  /** Text and places, by their index in `names`. */
  readonly told: readonly Part[];
  /** Letters of literal text: the more, the surer. */
  readonly weight: number;
}
/** A telling, and how many letters of it stayed English. */
interface Found {
  readonly parts: readonly (string | { readonly english: string })[];
  readonly left: number;
}

const PLACE = /\{([=~]?\w+)\}/;
const PLACES = /\{[=~]?\w+\}/g;
/** Sentences within sentences; deeper ones are none of ours. */
const DEEPEST = 8;
/** Letters of literal text from which on a sentence may hold English in a place. */
const LEAST_WEIGHT = 9;
/** Ways to lay one sentence's places over a text that are tried. */
const MOST_WAYS = 12;
/** Texts whose telling is remembered: memory must not grow with an archive. */
const MOST_KNOWN = 4000;
/** Parts of one text that are looked at; a text made to be slow stays English. */
const MOST_STEPS = 1000;
/** Of longer lists no item holds a comma. */
const MOST_ITEMS = 20;
/** Longer texts are none of ours. */
const LONGEST = 3000;

export function tellerOf(sentences: Sentences, tongue: Tongue): Teller {
  const exact = new Map<string, string>();
  for (const [id, { title, plain }] of Object.entries(catalogue)) {
    const name = tongue.find(`measures.${id}`);
    if (name !== undefined) exact.set(keyOf(title), name).set(keyOf(name), name);
    const spoken = tongue.find(`plain.${id}.name`);
    if (plain !== undefined && spoken !== undefined && !exact.has(keyOf(plain.name)))
      exact.set(keyOf(plain.name), spoken);
  }
  const measures: ReadonlyMap<string, string> = new Map(exact);
  for (const unit of new Set([...UNITS, ...Object.values(catalogue).map((measure) => measure.unit ?? "")])) {
    const written = unit === "" ? undefined : tongue.find(`units.${unit}`);
    if (written !== undefined && written !== "") exact.set(keyOf(written), written);
  }
  const sentencesFor = indexOf(
    Object.entries(sentences).flatMap(([english, told]) => {
      const kept = keptOf(withoutStop(english), told);
      if (kept === undefined) exact.set(keyOf(english), withoutStop(told));
      return kept ?? [];
    }),
  );
  let known = new Map<string, Found>();
  let olderKnown = known;
  let steps = 0;
  /** How often something stayed English only because it stood too deep or came too late. */
  let cuts = 0;

  /** The best telling of a text without its full stop. */
  function found(text: string, depth: number): Found {
    const before = known.get(text) ?? olderKnown.get(text);
    if (before !== undefined) return before;
    if (steps++ > MOST_STEPS) {
      cuts++;
      return { parts: [{ english: text }], left: text.length };
    }
    const cutsBefore = cuts;
    const best = search(text, depth);
    // What was cut short here may be told elsewhere.
    if (best.left === 0 || cuts === cutsBefore) known.set(text, best);
    return best;
  }

  function search(text: string, depth: number): Found {
    const name = exact.get(keyOf(text));
    if (name !== undefined) return whole(sameOpening(text, name));
    const measured = figures(text, tongue);
    if (measured !== undefined) return whole(measured);
    const stays: Found = { parts: [{ english: text }], left: text.length };
    if (text.length > LONGEST) return stays;
    if (depth >= DEEPEST) {
      cuts++;
      return stays;
    }
    let best = stays;
    for (const way of ways(text, depth)) {
      if (way.left < best.left) best = way;
      if (best.left === 0) break;
    }
    return best;
  }

  function* ways(text: string, depth: number): Generator<Found> {
    const sentences = text.split(APART);
    if (sentences.length > 1) yield allOf(sentences, depth, " ");
    yield* namedValue(measures, text, depth);
    const fitting = sentencesFor(text);
    const light = fitting.findIndex(({ weight }) => weight < LEAST_WEIGHT);
    const heavy = light < 0 ? fitting : fitting.slice(0, light);
    // A long sentence within another would take the other's beginning and end for what stands in its places.
    yield* laid(heavy, text, depth, (places) => !places.some(holdsList));
    // "{a} of {b}" would lie across the joints of a text: those come before it.
    yield* split(text, depth);
    yield* laid(heavy, text, depth, (places) => places.some(holdsList));
    if (light >= 0) yield* laid(fitting.slice(light), text, depth, () => true);
  }

  function* laid(
    patterns: readonly Pattern[],
    text: string,
    depth: number,
    may: (places: readonly string[]) => boolean,
  ): Generator<Found> {
    for (const pattern of patterns)
      for (const places of laidOver(pattern.english, text)) {
        if (!may(places)) continue;
        const told = filled(pattern, places, depth);
        if (told === undefined) continue;
        yield { parts: /^[A-Z]/.test(text) ? opened(told.parts) : told.parts, left: told.left };
      }
  }

  /** "Lowest VE/VCO2 26.7": a name and its value. */
  function* namedValue(names: ReadonlyMap<string, string>, text: string, depth: number): Generator<Found> {
    for (const { index } of text.matchAll(/ (?=[-−+]?\d)/g)) {
      const named = names.get(keyOf(text.slice(0, index)));
      const value = named === undefined ? undefined : spoken(text.slice(index + 1), depth + 1);
      if (named !== undefined && value?.left === 0) yield together([whole(sameOpening(text, named)), value], " ");
    }
  }

  function filled(pattern: Pattern, places: readonly string[], depth: number): Found | undefined {
    const told: Found[] = [];
    let left = 0;
    if (!places.every(isClosed)) return undefined;
    for (const [i, held] of places.entries()) {
      const place = pattern.names[i] as string;
      if (place.startsWith("=")) told.push(whole(held));
      else if (place.startsWith("~")) told.push({ parts: [{ english: held }], left: 0 });
      else told.push(spoken(held, depth + 1));
      left += (told[i] as Found).left;
      // "{a} of {b}" is in every other sentence: it tells a text whole or not at all.
      if (left > 0 && pattern.weight < LEAST_WEIGHT) return undefined;
    }
    return {
      parts: pattern.told.flatMap((part) => (typeof part === "string" ? [part] : (told[part] as Found).parts)),
      left,
    };
  }

  const allOf = (pieces: readonly string[], depth: number, joint: string): Found =>
    together(
      pieces.map((piece) => spoken(piece, depth + 1)),
      joint,
    );

  /** A text that is several: sentences after each other, a list, a remark in brackets. */
  function* split(text: string, depth: number): Generator<Found> {
    for (const [apart, joined] of [
      [" · ", " · "],
      ["; ", "; "],
      [": ", ": "],
    ] as const) {
      const pieces = apartIn(text, apart);
      if (pieces.length > 1) yield allOf(pieces, depth, joined);
    }
    const bracket = /^(.+) \((.+)\)$/s.exec(text);
    if (bracket) {
      const [outer, inner] = [bracket[1], bracket[2]].map((piece) => spoken(piece as string, depth + 1)) as [
        Found,
        Found,
      ];
      yield { parts: [...outer.parts, " (", ...inner.parts, ")"], left: outer.left + inner.left };
    }
    yield* namedValue(exact, text, depth);
    const pieces = apartIn(text, ", ");
    const lastPiece = pieces.at(-1) ?? "";
    const last = exact.has(keyOf(lastPiece)) ? [lastPiece] : lastPiece.split(" and ");
    const items = listed(last.length === 2 ? [...pieces.slice(0, -1), ...last] : pieces);
    if (items.length > 1) {
      const told = items.map((item) => spoken(item, depth + 1));
      const left = told.reduce((sum, one) => sum + one.left, 0);
      if (left === 0) {
        const texts = told.map((one) => one.parts.join(""));
        yield whole(last.length === 2 ? tongue.list(texts) : texts.join(", "));
      }
    }
  }

  /** Items of a list; a name that holds a comma itself is one. */
  function listed(pieces: readonly string[]): readonly string[] {
    if (pieces.length > MOST_ITEMS) return pieces;
    const items: string[] = [];
    for (let from = 0; from < pieces.length; ) {
      let to = pieces.length;
      while (to > from + 1 && !exact.has(keyOf(pieces.slice(from, to).join(", ")))) to--;
      items.push(pieces.slice(from, to).join(", "));
      from = to;
    }
    return items;
  }

  /** A text with or without its full stop. */
  function spoken(text: string, depth: number): Found {
    if (!text.endsWith(".")) return found(text, depth);
    const { parts, left } = found(text.slice(0, -1), depth);
    return { parts: [...parts, "."], left };
  }

  return (text, mark = (english) => english) => {
    steps = 0;
    if (known.size > MOST_KNOWN) {
      olderKnown = known;
      known = new Map();
    }
    const { parts } = spoken(text, 0);
    return parts.map((part) => (typeof part === "string" ? part : mark(part.english))).join("");
  };
}

/** Between one sentence and the next. */
const APART = /(?<=[.!?]) (?=\p{Lu}|\d)/u;
const WORD = /[A-Za-z]{3,}/g;
const holdsList = (text: string): boolean => text.includes("; ") && apartIn(text, "; ").length > 1;

/** Whether each bracket of a text opens and closes in it. */
function isClosed(text: string): boolean {
  let open = 0;
  for (let i = 0; i < text.length && open >= 0; i++) {
    const sign = text.charCodeAt(i);
    if (sign === 40) open++;
    else if (sign === 41) open--;
  }
  return open === 0;
}
/** Pieces between the joints that stand in no bracket. */
function apartIn(text: string, joint: string): string[] {
  const pieces: string[] = [];
  let open = 0;
  for (const piece of text.split(joint)) {
    if (open > 0) pieces.push(`${pieces.pop()}${joint}${piece}`);
    else pieces.push(piece);
    for (const sign of piece) open += sign === "(" ? 1 : sign === ")" ? -1 : 0;
  }
  return pieces;
}
const whole = (text: string): Found => ({ parts: [text], left: 0 });
const together = (found: readonly Found[], joint: string): Found => ({
  parts: found.flatMap(({ parts }, i) => (i === 0 ? parts : [joint, ...parts])),
  left: found.reduce((sum, { left }) => sum + left, 0),
});
const withoutStop = (text: string): string => (text.endsWith(".") ? text.slice(0, -1) : text);
/** "Body mass." and "body mass" are one sentence. */
const keyOf = (text: string): string => lowered(withoutStop(text));
const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const raised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const sameOpening = (text: string, told: string): string => (/^[A-Z]/.test(text) ? raised(told) : told);
const opened = (parts: Found["parts"]): Found["parts"] =>
  typeof parts[0] === "string" ? [raised(parts[0]), ...parts.slice(1)] : parts;

/** A sentence to be kept; undefined for one without places. */
function keptOf(english: string, told: string): Kept | undefined {
  const first = PLACE.exec(english);
  if (first === null) return undefined;
  return {
    english,
    told,
    head: lowered(english.slice(0, first.index)),
    tail: english.slice(english.lastIndexOf("}") + 1),
  };
}

const patternOf = (kept: Kept): Pattern => {
  kept.pattern ??= readPattern(kept);
  return kept.pattern;
};
function readPattern({ english, told, head }: Kept): Pattern {
  const pieces = english.split(PLACE);
  const literal = pieces.filter((_, i) => i % 2 === 0).map((piece, i) => (i === 0 ? head : piece));
  const names = pieces.filter((_, i) => i % 2 === 1);
  return {
    english: literal,
    names,
    told: withoutStop(told)
      .split(PLACE)
      .map((piece, i) => (i % 2 === 0 ? piece : names.findIndex((name) => bare(name) === bare(piece))))
      .filter((part) => part !== ""),
    weight: literal.join("").length,
  };
}
const bare = (name: string): string => name.replace(/^[=~]/, "");

/** Letters of a beginning or an end by which a sentence is found, the longest it has. */
const ENDS = [16, 8, 4] as const;

/**
 * The sentences that a text may be, the surest first: found by how they begin, else by how they end, else by their longest
 * word; one that has none of these is looked at for every text.
 */
function indexOf(sentences: readonly Kept[]): (text: string) => Pattern[] {
  const byHead = new Map<string, Kept[]>();
  const byTail = new Map<string, Kept[]>();
  const byWord = new Map<string, Kept[]>();
  const put = (index: Map<string, Kept[]>, key: string, kept: Kept): void => {
    const there = index.get(key);
    if (there === undefined) index.set(key, [kept]);
    else there.push(kept);
  };
  for (const kept of sentences) {
    const { head, tail, english } = kept;
    const begins = ENDS.find((length) => head.length >= length);
    const ends = ENDS.find((length) => tail.length >= length);
    if (begins !== undefined) put(byHead, head.slice(0, begins), kept);
    else if (ends !== undefined) put(byTail, tail.slice(-ends), kept);
    else put(byWord, longestWord(english), kept);
  }
  return (text) => {
    const low = lowered(text);
    const fitting: Kept[] = [];
    const look = (near: readonly Kept[] | undefined): void => {
      for (const kept of near ?? []) if (low.startsWith(kept.head) && text.endsWith(kept.tail)) fitting.push(kept);
    };
    for (const length of ENDS) {
      look(byHead.get(low.slice(0, length)));
      look(byTail.get(text.slice(-length)));
    }
    for (const word of new Set(text.toLowerCase().match(WORD))) look(byWord.get(word));
    look(byWord.get(""));
    return fitting.map(patternOf).sort((a, b) => b.weight - a.weight);
  };
}

const longestWord = (english: string): string => {
  let longest = "";
  for (const word of english.toLowerCase().replace(PLACES, " {} ").match(WORD) ?? [])
    if (word.length > longest.length) longest = word;
  return longest;
};

/** What the places hold when the literal text is laid over a text that begins and ends with it, in each way it fits. */
function* laidOver(literal: readonly string[], text: string): Generator<readonly string[]> {
  const last = literal.length - 1;
  const end = text.length - (literal[last] as string).length;
  let at = (literal[0] as string).length;
  if (last === 1) {
    if (end > at) yield [text.slice(at, end)];
    return;
  }
  const from0 = at;
  for (let index = 1; index < last; index++) {
    const next = text.indexOf(literal[index] as string, at + 1);
    if (next < 0) return;
    at = next + (literal[index] as string).length;
  }
  if (end <= at) return;
  let ways = 0;
  function* from(at: number, index: number): Generator<string[]> {
    if (index === last) {
      if (end > at) yield [text.slice(at, end)];
      return;
    }
    const piece = literal[index] as string;
    for (let next = text.indexOf(piece, at + 1); next > at && ways < MOST_WAYS; next = text.indexOf(piece, next + 1))
      for (const others of from(next + piece.length, index + 1)) {
        ways++;
        yield [text.slice(at, next), ...others];
      }
  }
  yield* from(from0, 1);
}

const MONTHS = "January February March April May June July August September October November December".split(" ");
const SPOKEN_DATE = new RegExp(`^(\\d{1,2}) (${MONTHS.join("|")}) (\\d{4})$`);
/** A key of a record ("session.yaml rest.readings"), a formula with its revision and a table ("weir-1949") stay as written. */
const KEY =
  /^(?:(?:session|client|lab)\.yaml )?[a-z]\w*(?:[._]\w+)+$|^[a-z]+(?:-\w+)* r\d+$|^[a-z]\w*(?:-\w+)*-\d{4}(?:-[a-z]+)?$/;
/** "Kaminsky 2015", "WHO 2000": names of works are the same in every language. */
const WORK = /^(?:\p{Lu}[\p{L}’'-]+ )+(?:and \p{Lu}\p{L}+ )?\d{4}[a-z]?$/u;
/** Letters that stand for quantities. */
const SYMBOL = /^(?:[B-HJ-Zb-z]|CV|SD|SEM|SEE|ICC|R²|V[TEO]2?|FIO2)$/;
const NUMBER = /\d+(?:\.\d+)?/g;

/** A date, a key, or numbers with units and signs and no other word; undefined for anything else. */
function figures(text: string, tongue: Tongue): string | undefined {
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return tongue.date(text);
  if (KEY.test(text) || WORK.test(text)) return text;
  const date = SPOKEN_DATE.exec(text);
  if (date) {
    const month = String(MONTHS.indexOf(date[2] as string) + 1).padStart(2, "0");
    return tongue.date(`${date[3]}-${month}-${(date[1] as string).padStart(2, "0")}`);
  }
  const words = text.split(/[ \u00a0]/);
  const told = words.map((word) => {
    const unit = /^(.*?)([,;]?)$/.exec(word) as RegExpExecArray;
    const [, bareWord = "", stop = ""] = unit;
    if (UNITS.has(bareWord)) return `${tongue.find(`units.${bareWord}`) ?? bareWord}${stop}`;
    if (SYMBOL.test(bareWord) || KEY.test(bareWord)) return word;
    if (/[A-Za-z]/.test(word.replace(/(?<=\d)(?:e[-−]?\d+|%)/g, ""))) return undefined;
    return word.replace(NUMBER, (number) => number.replace(".", tongue.decimalSign)).replace(/^-(?=\d)/, "\u2212");
  });
  if (told.some((word) => word === undefined)) return undefined;
  const joined = told.join(" ");
  // "37, 37.5" would read as four numbers with decimal commas.
  return tongue.decimalSign === "," ? joined.replace(/(?<=\d), /g, "; ") : joined;
}

/** Every unit of the catalogue, and those that only sentences and columns have. */
const UNITS: ReadonlySet<string> = new Set([
  ...Object.values(catalogue).flatMap(({ unit }) => (unit === undefined || /[a-z]{4,}/.test(unit) ? [] : [unit])),
  ..."% s min h d ms g kg mg mL L µL m cm mm km mmHg kPa hPa W N Nm J kJ kcal K °C km/h m/s m/min 1/min /min mL/min L/min mmol/L g/L g/dL rpm".split(
    " ",
  ),
]);
