/** Indices of ventilation against gas exchange, from the fifteen-second means of the incremental phase. */
import type { MeasureId } from "../../kernel/measures.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Visit } from "../../kernel/visit.js";
import { foundOrWithheld } from "../found-or-withheld.js";
import * as reserve from "./breathing-reserve.js";
import * as mvv from "./mvv-from-fev1.js";
import * as oues from "./oxygen-uptake-efficiency-slope.js";
import { numbersOf, type Row } from "./read-table.js";
import * as nadir from "./ventilation-vco2-lowest.js";
import * as sun from "./ventilation-vco2-lowest-sun.js";
import * as slope from "./ventilation-vco2-slope.js";
import * as habedank from "./ventilation-vco2-slope-habedank.js";

/** `bins`: rows of incremental_bins of the incremental phase, its first minute dropped. */
export function ventilationIndices(book: Notebook, visit: Visit, bins: readonly Row[]): void {
  efficiency(book, bins);
  slopes(book, visit, bins);
  breathingReserve(book);
}

function efficiency(book: Notebook, bins: readonly Row[]): void {
  const cuts = [
    ["oxygen_uptake_efficiency_slope", 1, "whole incremental phase after its first minute"],
    ["oxygen_uptake_efficiency_slope_90", 0.9, "first 90 % of it"],
    ["oxygen_uptake_efficiency_slope_75", 0.75, "first 75 % of it"],
  ] as const;
  for (const [id, share, range] of cuts) {
    const [ve = [], vo2 = []] = numbersOf(
      bins.slice(0, Math.ceil(bins.length * share)),
      "ventilation_l_min",
      "vo2_l_min",
    );
    const inputs = [
      { name: "fifteen-second means", value: ve.length, unit: "" },
      { name: "range", value: range, unit: "" },
    ];
    foundOrWithheld(book, id, oues.info, inputs, () =>
      oues.oxygenUptakeEfficiencySlope(
        ve,
        vo2.map((x) => 1000 * x),
      ),
    );
  }
}

function slopes(book: Notebook, visit: Visit, bins: readonly Row[]): void {
  const personal = [
    { name: "age", value: visit.ageYears, unit: "years" },
    { name: "sex", value: visit.client.sex, unit: "" },
  ] as const;
  const writeSlope = (id: MeasureId, rows: readonly Row[], range: string) => {
    const [vco2 = [], ve = []] = numbersOf(rows, "vco2_l_min", "ventilation_l_min");
    const inputs = [
      { name: "fifteen-second means", value: ve.length, unit: "" },
      { name: "range", value: range, unit: "" },
    ];
    foundOrWithheld(book, id, slope.info, inputs, () => slope.ventilationVco2Slope(vco2, ve), { note: range });
  };
  writeSlope("ventilation_vco2_slope_whole", bins, "whole incremental phase after its first minute");
  const second = book.value("vt2_vo2" as MeasureId);
  if (second === undefined)
    book.withhold("ventilation_vco2_slope", "the second threshold is not identified, and the slope is fitted up to it");
  else writeSlope("ventilation_vco2_slope", upTo(bins, second), "after the first minute, to the second threshold");
  foundOrWithheld(book, "ventilation_vco2_slope_predicted", habedank.info, personal, () =>
    habedank.ventilationVco2SlopeHabedank(visit.ageYears, visit.client.sex),
  );
  lowest(book, bins);
  const stature = book.value("stature");
  if (stature === undefined) book.withhold("ventilation_vco2_lowest_predicted", "stature was not measured");
  else
    foundOrWithheld(book, "ventilation_vco2_lowest_predicted", sun.info, [...personal, "stature"], () =>
      sun.ventilationVco2LowestSun(visit.ageYears, stature, visit.client.sex),
    );
}

/** Bins before uptake, as a mean of three, first passes a level. */
function upTo(bins: readonly Row[], vo2: number): readonly Row[] {
  for (let i = 0; i + 2 < bins.length; i++) {
    const three = bins.slice(i, i + 3).map((row) => row.number("vo2_l_min") ?? Number.NaN);
    if (three.reduce((sum, x) => sum + x, 0) / 3 > vo2) return bins.slice(0, i + 1);
  }
  return bins;
}

function lowest(book: Notebook, bins: readonly Row[]): void {
  const [vco2 = [], ve = []] = numbersOf(bins, "vco2_l_min", "ventilation_l_min");
  const inputs = [{ name: "fifteen-second means", value: ve.length, unit: "" }];
  foundOrWithheld(book, "ventilation_vco2_lowest", nadir.info, inputs, () => nadir.ventilationVco2Lowest(ve, vco2));
}

function breathingReserve(book: Notebook): void {
  const measured = book.value("mvv" as MeasureId);
  const fev1 = "fev1" as MeasureId;
  if (book.entry(fev1) !== undefined && book.entry("maximal_voluntary_ventilation") === undefined)
    book.compute("maximal_voluntary_ventilation", mvv.info, [fev1]);
  const from: MeasureId = measured === undefined ? "maximal_voluntary_ventilation" : ("mvv" as MeasureId);
  const [peak, capacity] = [book.value("ventilation_peak"), book.value(from)];
  if (peak === undefined || capacity === undefined) {
    const because = peak === undefined ? "peak ventilation is not given" : "neither MVV nor FEV1 was measured";
    for (const id of ["breathing_reserve", "breathing_reserve_volume"] as const) book.withhold(id, because);
    return;
  }
  const note = measured === undefined ? "MVV estimated as 40 · FEV1" : "MVV measured";
  book.compute("breathing_reserve", reserve.info, ["ventilation_peak", from], { note });
  book.found("breathing_reserve_volume", capacity - peak, reserve.info, ["ventilation_peak", from], { note });
}
