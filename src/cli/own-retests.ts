/**
 * The laboratory's own test-retest pairs and what they say, for `waymark retests`: the files that lab.yaml names, then
 * visits repeated with purpose reliability.
 */
import { attempt } from "../compare/attempt.js";
import type { RetestSet } from "../compare/known.js";
import { type RetestReport, retestReport } from "../compare/retest-report.js";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Document } from "../kernel/document.js";
import { measureInfo } from "../kernel/measures.js";
import type { Practice } from "./practice.js";
import { openReference } from "./reference.js";

export interface OwnRetests {
  readonly set: RetestSet;
  readonly title: string;
  /** "" for a measure that has none, or that this program does not know. */
  readonly unit: string;
  readonly decimals: number;
  /** Absent when the error cannot be computed. */
  readonly report?: RetestReport;
  readonly because?: string;
}

export async function ownRetests(
  practice: Practice,
  lab: Document,
): Promise<{ readonly sets: readonly OwnRetests[]; readonly diagnostics: readonly Diagnostic[] }> {
  const { reference, diagnostics } = await openReference(practice, lab);
  return { sets: reference.laboratoryRetests.map(reported), diagnostics };
}

/** Why no error follows from a set, in the order in which it is asked. */
function obstacle({ pairs }: RetestSet): string {
  if (pairs.length < 2)
    return `${pairs.length === 0 ? "there is no pair" : "there is one pair only"}; two are the least`;
  return "all pairs differ by the same amount, so nothing varies";
}

export function reported(set: RetestSet): OwnRetests {
  const info = measureInfo(set.measure);
  const report = attempt(() => retestReport(set.pairs));
  return {
    set,
    title: info?.title ?? set.measure,
    unit: info?.unit ?? "",
    decimals: info?.decimals ?? decimalsIn(set),
    ...(report === undefined ? { because: obstacle(set) } : { report }),
  };
}

const decimalsIn = ({ pairs }: RetestSet): number =>
  Math.min(3, Math.max(0, ...pairs.flat().map((value) => String(value).split(".")[1]?.length ?? 0)));
