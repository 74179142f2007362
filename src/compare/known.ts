/** What comparing needs beside the results themselves; pipeline and command line gather it. */
import type { TypicalErrorTable } from "../kernel/generated/typical-error.js";
import type { Pair } from "./error/pairs.js";

/** Test-retest pairs of one measure from this laboratory: a file that lab.yaml names, or visits with purpose reliability. */
export interface RetestSet {
  readonly measure: string;
  readonly pairs: readonly Pair[];
  /** "within 7" as printed beside the error. */
  readonly daysBetween?: string;
  /** Who was tested and how, in one line. */
  readonly from: string;
  /** Conditions that must agree with the visit's, by the names of Results.conditions (mode: treadmill). */
  readonly conditions?: Readonly<Record<string, string>>;
}

/** A value the client wants to reach, with its date. Bounds in the measure's unit. */
export interface Target {
  readonly measure: string;
  readonly goal: string;
  readonly date?: string;
  readonly atLeast?: number;
  readonly atMost?: number;
}

/** How much people of the client's kind differ, in the measure's unit: ground of the default worthwhile change. */
export interface Spread {
  readonly measure: string;
  readonly sd: number;
  readonly mean?: number;
  readonly sex?: "female" | "male";
  readonly from: string;
}

export interface Known {
  readonly laboratoryRetests: readonly RetestSet[];
  readonly publishedErrors: readonly TypicalErrorTable[];
  /** Measures declared at baseline, as ids. */
  readonly primaryOutcomes: readonly string[];
  readonly targets: readonly Target[];
  /** Smallest change that matters to this client, by measure, in its unit. */
  readonly worthwhile: Readonly<Record<string, { readonly value: number; readonly from: string }>>;
  readonly spreads?: readonly Spread[];
}
