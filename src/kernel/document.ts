/**
 * A YAML file of the practice after reading: its value, and where in the file each key and value stands, so that a
 * stage far from the text can still point at it.
 */
import type { Diagnostic, Place } from "./diagnostic.js";

/** Keys and list positions (0-based) from the top of a document to one of its values. */
export type Path = readonly (string | number)[];

/** What of a key-value pair is pointed at. */
export type Part = "key" | "value";

export interface Span {
  /** Offsets in `text`, end excluded. */
  readonly start: number;
  readonly end: number;
}

export interface Document {
  /** Path relative to the practice folder, with forward slashes. */
  readonly file: string;
  readonly text: string;
  /** Plain data; undefined when the text could not be understood. */
  readonly value: unknown;
  /** What is wrong with the text itself. */
  readonly diagnostics: readonly Diagnostic[];
  /** The place of a key or value. A path that leads nowhere gives the place of the nearest thing above it. */
  place(path: Path, part?: Part): Place;
  span(path: Path, part?: Part): Span | undefined;
  /** The scalar as the file writes it ("017", ".5"), quotes left out; undefined for lists and mappings. */
  written(path: Path): string | undefined;
}
