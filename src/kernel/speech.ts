/**
 * How a language writes numbers, dates and sentences. The wording itself is data (templates/words/<language>.yaml);
 * this is the one place that fills it in, so that charts and report say the same thing the same way.
 */
import { toDecimals } from "./rounding.js";
import { type Sentences, type Teller, tellerOf } from "./told.js";

/** A words file after reading: nested groups of texts. */
export type WordTree = { readonly [key: string]: string | WordTree };
export type Fill = Readonly<Record<string, string | number>>;

export interface Speech {
  /** BCP 47 tag: "en", "de". */
  readonly language: string;
  /** The text at a dotted path with its {places} filled. Throws WordingError when the text or a place is missing. */
  say(path: string, fill?: Fill): string;
  /** The text at a path, or undefined: for names that a language may leave in English. */
  find(path: string): string | undefined;
  /** 1234.5 → "1 234.5" with the language's decimal sign, a true minus and thin spaces from ten thousand on. */
  number(value: number, decimals: number): string;
  /** A number with its sign always shown. */
  signed(value: number, decimals: number): string;
  /** "2026-03-02" → "2 March 2026". */
  date(iso: string): string;
  /** "2026-03-02" → "2 Mar 2026", for tables and axes. */
  shortDate(iso: string): string;
  /** Items joined as the language joins them: "a, b and c". */
  list(items: readonly string[]): string;
  /** A sentence of the results file in the language; what it has no sentence for stays English and is given to `mark`. */
  told: Teller;
}

export class WordingError extends Error {
  constructor(
    readonly path: string,
    reason: string,
  ) {
    super(`words: ${path} ${reason}`);
    this.name = "WordingError";
  }
}

/** A text, and the same cut at its {places}: literal, place, literal, place … literal. */
interface Wording {
  readonly text: string;
  readonly cut: readonly string[];
}

/** Every text of a tree by its dotted path. */
function wordingsOf(tree: WordTree, path = "", into = new Map<string, Wording>()): ReadonlyMap<string, Wording> {
  for (const [key, node] of Object.entries(tree))
    if (typeof node === "string") into.set(path + key, { text: node, cut: node.split(/\{(\w+)\}/) });
    else if (typeof node === "object" && node !== null) wordingsOf(node, `${path}${key}.`, into);
  return into;
}

/** One speech a tree of words, so that a build of many visits cuts its texts once. */
const spoken = new WeakMap<WordTree, Speech>();
export function speechOf(words: WordTree): Speech {
  const speech = spoken.get(words) ?? openSpeech(words);
  spoken.set(words, speech);
  return speech;
}

function openSpeech(words: WordTree): Speech {
  const wordings = wordingsOf(words);
  const find = (path: string): string | undefined => wordings.get(path)?.text;
  const say = (path: string, fill: Fill = {}): string => {
    const wording = wordings.get(path);
    if (wording === undefined) throw new WordingError(path, "has no text");
    const { cut } = wording;
    let said = cut[0] as string;
    for (let i = 1; i < cut.length; i += 2) {
      const place = cut[i] as string;
      if (!Object.hasOwn(fill, place)) throw new WordingError(path, `has a place {${place}} that nothing fills`);
      said += `${fill[place]}${cut[i + 1]}`;
    }
    return said;
  };
  const decimalSign = say("language.decimal_sign");
  const months = say("language.months").split(" ");
  const shortMonths = say("language.short_months").split(" ");

  const number = (value: number, decimals: number): string => {
    const text = toDecimals(Math.abs(value), decimals);
    const point = text.indexOf(".");
    const whole = point < 0 ? text : text.slice(0, point);
    const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, "\u202f") : whole;
    const digits = point < 0 ? grouped : grouped + decimalSign + text.slice(point + 1);
    return value < 0 && /[1-9]/.test(digits) ? `\u2212${digits}` : digits;
  };
  const written = (iso: string, names: readonly string[], path: string): string => {
    const [year = "", month = "", day = ""] = iso.split("-");
    const name = names[Number(month) - 1];
    return name === undefined ? iso : say(path, { day: String(Number(day)), month: name, year });
  };
  const speech: Speech = {
    language: say("language.tag"),
    say,
    find,
    number,
    signed: (value, decimals) => {
      const text = number(value, decimals);
      return text.startsWith("\u2212") || !/[1-9]/.test(text) ? text : `+${text}`;
    },
    date: (iso) => written(iso, months, "language.date"),
    shortDate: (iso) => written(iso, shortMonths, "language.date"),
    list: (items) =>
      items.length < 2
        ? items.join("")
        : say("language.list_last", { first: items.slice(0, -1).join(", "), last: items[items.length - 1] as string }),
    told: (text, mark) =>
      typeof words.sentences === "object" ? tellerFor(words, speech)(text, mark) : withDates(text, speech.date),
  };
  return speech;
}

/** A recorded sentence has its dates as they are sorted; a reader gets them as they are spoken. Names of visits stay. */
const withDates = (text: string, date: (iso: string) => string): string =>
  text.includes("-") ? text.replace(ISO_DATE, date) : text;
export const ISO_DATE = /(?<![\w/-])\d{4}-\d{2}-\d{2}(?![\w/-])/g;

/** Made when a text is first told, and kept as long as the words are. */
const tellers = new WeakMap<WordTree, Teller>();
function tellerFor(words: WordTree, speech: Speech): Teller {
  const known =
    tellers.get(words) ??
    tellerOf(words.sentences as Sentences, { ...speech, decimalSign: speech.say("language.decimal_sign") });
  tellers.set(words, known);
  return known;
}
