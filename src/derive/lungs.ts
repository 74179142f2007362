/** Lungs: every forced manoeuvre kept, the largest values, their repeatability and grade, voluntary ventilation. */
import type { Lungs, Manoeuvre } from "../kernel/generated/session.js";
import type { MeasureId } from "../kernel/measures.js";
import type { Notebook, Ref } from "../kernel/notebook.js";
import { toDecimals } from "../kernel/rounding.js";
import type { Visit } from "../kernel/visit.js";
import * as mvv from "./indices/mvv-from-fev1.js";
import { counting, type Standing, standingOf } from "./lungs/counting-manoeuvres.js";
import * as ratio from "./lungs/flow-ratio.js";
import * as largest from "./lungs/largest-volume.js";
import * as grade from "./lungs/session-grade.js";
import * as apart from "./lungs/two-largest-apart.js";

const ESTIMATE = "An estimate from FEV1, not a measurement; factors of 35 to 40 are in use.";

export function deriveLungs(book: Notebook, visit: Visit): void {
  const block = visit.session.lungs;
  if (block === undefined) return;
  const key = (name: string) => `${visit.file} lungs.${name}`;
  writeSpirometry(book, block, key);
  if (block.mvv_l_min !== undefined) book.record("mvv", block.mvv_l_min, key("mvv_l_min"));
  else if (book.value("fev1") !== undefined)
    book.compute("maximal_voluntary_ventilation", mvv.info, ["fev1"], { note: ESTIMATE });
}

function writeSpirometry(book: Notebook, block: Lungs, key: (name: string) => string): void {
  const all = block.manoeuvres ?? [];
  const missing =
    all.length === 0
      ? "lungs.manoeuvres holds no manoeuvre"
      : block.volumes_at === undefined
        ? "lungs.volumes_at was not recorded, so it is not known whether the volumes are BTPS"
        : undefined;
  if (all.length > 0) tabulate(book, all);
  if (missing !== undefined) {
    for (const id of ["fev1", "fvc", "fev1_fvc", "fev1_grade", "fvc_grade"] as const) book.withhold(id, missing);
    return;
  }
  const used = counting(all);
  const values = (field: "fev1_l" | "fvc_l", from: readonly Manoeuvre[]): Ref => ({
    name: key(`manoeuvres ${field}`),
    value: from.map((m) => m[field]),
    unit: "L",
  });
  book.compute("fev1", largest.info, [values("fev1_l", used)]);
  book.compute("fvc", largest.info, [values("fvc_l", used)]);
  book.compute("fev1_fvc", ratio.info, ["fev1", "fvc"]);
  const flows = used.flatMap((m) => (m.pef_l_s === undefined ? [] : [m.pef_l_s]));
  if (flows.length > 0)
    book.compute("peak_expiratory_flow", largest.info, [
      { name: key("manoeuvres pef_l_s"), value: flows, unit: "L/s" },
    ]);
  judge(book, all, "fev1_l", "fev1_grade", "fev1_repeatability", values);
  judge(book, all, "fvc_l", "fvc_grade", "fvc_repeatability", values);
}

function judge(
  book: Notebook,
  all: readonly Manoeuvre[],
  field: "fev1_l" | "fvc_l",
  gradeId: MeasureId,
  apartId: MeasureId,
  values: (field: "fev1_l" | "fvc_l", from: readonly Manoeuvre[]) => Ref,
): void {
  const unmarked = all.filter((m) => standingOf(m).is === "unmarked").length;
  if (unmarked > 0) {
    const because = `acceptable was not recorded for ${unmarked} of ${all.length} manoeuvres`;
    book.withhold(gradeId, because);
    book.withhold(apartId, because);
    return;
  }
  const accepted = all.filter((m) => standingOf(m).is === "accepted");
  book.compute(apartId, apart.info, [values(field, accepted)]);
  const list = accepted.map((m) => m[field]);
  const letter = grade.sessionGrade(list, all.filter((m) => standingOf(m).is === "usable").length);
  const difference =
    list.length < 2 ? "" : `, the two largest ${toDecimals(1000 * apart.twoLargestApart(list), 0)} mL apart`;
  book.judge(
    gradeId,
    `grade ${letter}`,
    `${list.length} of ${all.length} forced breaths met the criteria${difference} (ATS/ERS 2019).`,
    { rule: `${grade.info.id} r${grade.info.revision}` },
  );
}

function tabulate(book: Notebook, all: readonly Manoeuvre[]): void {
  book.table(
    "spirometry_manoeuvres",
    [
      { key: "manoeuvre", title: "Manoeuvre", decimals: 0 },
      { key: "fvc_l", title: "FVC", unit: "L", decimals: 2 },
      { key: "fev1_l", title: "FEV1", unit: "L", decimals: 2 },
      { key: "pef_l_s", title: "Peak flow", unit: "L/s", decimals: 1 },
      { key: "standing", title: "Counted" },
    ],
    all.map((m, i) => {
      const standing = standingOf(m);
      return [i + 1, m.fvc_l, m.fev1_l, m.pef_l_s ?? null, words(standing)];
    }),
    largest.info,
    [],
  );
}

function words(standing: Standing): string {
  if ("because" in standing) return `${standing.is === "usable" ? "usable only" : "no"}: ${standing.because}`;
  return standing.is === "accepted" ? "yes" : "yes, acceptability not recorded";
}
