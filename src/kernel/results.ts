/**
 * The results of one visit, as results/ writes them to results.yaml and reads them back. Values are rounded to their
 * decimals; everything after this boundary (compare with earlier visits, charts, report) sees the recorded numbers,
 * so that a reader can repeat each sum from the printed digits.
 */
import type { Choices } from "./generated/choices.js";
import type { Entry } from "./measure.js";

export interface Results {
  readonly client: string;
  readonly sex: "female" | "male";
  readonly date: string;
  readonly label?: string;
  readonly purpose: "baseline" | "retest" | "reliability" | "other";
  readonly ageYears: number;
  /** The files the numbers came from, session first, each with its SHA-256 (hex). */
  readonly sources: readonly { readonly file: string; readonly sha256: string }[];
  readonly choices: Choices;
  /** Facts that must agree before two visits are compared: mode, protocol, instrument, hour of day … as words. */
  readonly conditions: Readonly<Record<string, string>>;
  /** In the order of the report: sections, then catalogue. */
  readonly entries: readonly Entry[];
}
