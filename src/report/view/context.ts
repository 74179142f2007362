/** What every part of the view is made from, and how numbers and names are written. */
import * as entries from "../../kernel/entries.js";
import type { Figure } from "../../kernel/figure.js";
import type { AnyFormula } from "../../kernel/formula.js";
import type { Client } from "../../kernel/generated/client.js";
import type { Laboratory } from "../../kernel/generated/laboratory.js";
import type { Cell, Entry, Quantity, Section } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import * as names from "../../kernel/names.js";
import type { Results } from "../../kernel/results.js";
import type { Rule } from "../../kernel/rule.js";
import { ISO_DATE, type Speech } from "../../kernel/speech.js";
import { asEnglish, ENGLISH_BEGINS, ENGLISH_ENDS } from "../english.js";
import type { FigureView } from "./types.js";

/** A reference table as the report cites it. */
export interface CitedTable {
  readonly id: string;
  readonly measure: string;
  readonly source: {
    readonly authors: string;
    readonly year: number | string | null;
    readonly title: string;
    readonly journal?: string | null;
    readonly doi?: string | null;
    readonly where?: string;
  };
  readonly verified: string;
}

export interface Context {
  readonly results: Results;
  readonly earlier: readonly Results[];
  readonly client: Client;
  readonly laboratory: Laboratory;
  readonly formulas: readonly AnyFormula[];
  readonly rules: readonly Rule[];
  readonly tables: readonly CitedTable[];
  readonly speech: Speech;
  readonly drawn: ReadonlyMap<string, DrawnFigure>;
  readonly figures: readonly Figure[];
  /** SHA-256 of results.yaml, hex. */
  readonly digest: string;
}
export interface DrawnFigure {
  readonly view: FigureView;
  readonly section: Section;
  readonly measure: string | undefined;
}

/** A recorded text in the report's language; what stays English is marked so. */
export const told = ({ speech }: Pick<Context, "speech">, text: string): string => speech.told(text, asEnglish);
/** What is English in every report: a title, a citation, an equation. */
export const english = ({ speech }: Pick<Context, "speech">, text: string): string =>
  speech.language === "en" || text === "" ? text : asEnglish(text);
/** A text as it is told, ended like a sentence. */
export const toldSentence = (context: Pick<Context, "speech">, text: string): string => sentence(told(context, text));

export const nameOf = ({ speech }: Context, id: string): string => names.nameOf(speech, id);
export const plainNameOf = ({ speech }: Context, id: string): string => names.plainNameOf(speech, id);
export const sectionOf = (entry: Entry): Section | "other" => {
  if (entry.kind === "remark") return "validity";
  if (entry.kind === "change") return "change";
  if (/^(?:change|trend|explained|goal)_/.test(entry.id) && measureInfo(entry.id) === undefined) return "change";
  return measureInfo(entry.id)?.section ?? "other";
};

export const unitText = ({ speech }: Context, unit: string): string => names.unitOf(speech, unit);

export const valueText = ({ speech }: Context, at: Pick<Quantity, "value" | "decimals">): string =>
  speech.number(at.value, at.decimals);
export const valueWithUnit = ({ speech }: Context, at: Pick<Quantity, "value" | "decimals" | "unit">): string =>
  names.withUnit(speech, at);

export function cellText(context: Context, cell: Cell | undefined, decimals: number): string {
  const { speech } = context;
  if (cell === null || cell === undefined || cell === "") return speech.say("report.absent");
  if (typeof cell === "number") return speech.number(cell, decimals);
  const text = /^\d{4}-\d{2}-\d{2}$/.test(cell) ? speech.shortDate(cell) : amountText(context, cell);
  return text.length <= ONE_LINE ? text.replaceAll(" ", "\u00a0") : text;
}
/** Letters of a cell that stay on one line: "132 to 162", "not answered", a date. */
const ONE_LINE = 13;

/** "157 1/min" with the unit as it is printed; any other text with its dates short, as a cell has little room. */
function amountText(context: Context, cell: string): string {
  const { speech } = context;
  const [, amount, unit = ""] = /^(-?\d+(?:\.\d+)?) (\S+)$/.exec(cell) ?? [];
  if (amount !== undefined && speech.find(`units.${unit}`) !== undefined)
    return valueWithUnit(context, { value: Number(amount), decimals: decimalsOf(amount), unit });
  let text = told(context, cell);
  if (!cell.includes("-")) return text;
  for (const [date] of cell.matchAll(ISO_DATE)) text = text.replace(speech.date(date), speech.shortDate(date));
  return text;
}

/** Decimals of a number that was recorded as text. */
export const decimalsOf = (text: string): number => text.split(".")[1]?.length ?? 0;

export const entryOf = ({ results }: Context, id: string): Entry | undefined => entries.entryOf(results, id);
export const quantityOf = ({ results }: Context, id: string): Quantity | undefined => entries.quantityOf(results, id);
export const entriesOf = <K extends Entry["kind"]>({ results }: Context, kind: K): Extract<Entry, { kind: K }>[] =>
  results.entries.filter((entry): entry is Extract<Entry, { kind: K }> => entry.kind === kind);
/** "stage_length_s" → "Stage length (s)", or the language's own name. */
export const conditionName = ({ speech }: Context, key: string): string =>
  speech.find(`conditions.${key}`) ?? opening(key.replace(/_(cm|s|kg|mmhg)$/, " ($1)").replaceAll("_", " "));

/** A name within a sentence: English begins it small, German only where an adjective leads ("höchste Herzfrequenz"). */
export const withinSentence = ({ speech }: Pick<Context, "speech">, name: string): string =>
  name.replace(speech.language === "en" ? /^[A-Z](?=[a-z])/ : /^\p{Lu}(?=\p{Ll}*e[rs]? \p{Lu})/u, (letter) =>
    letter.toLowerCase(),
  );

/** Sentence case, for names that open a line. */
export const opening = (text: string): string => {
  const at = text.startsWith(ENGLISH_BEGINS) ? 1 : 0;
  return text.slice(0, at) + text.charAt(at).toUpperCase() + text.slice(at + 1);
};
/** A sentence that ends like one. */
export const sentence = (text: string): string =>
  ENDED.test(text.trim()) ? opening(text.trim()) : `${opening(text.trim())}.`;
const ENDED = new RegExp(`[.!?…]${ENGLISH_ENDS}?$`);
