/** Biological controls over months: which count, and what a drift looks like. */
import { describe, expect, it } from "vitest";
import { deriveControls } from "../../src/derive/controls.js";
import { controlTrend } from "../../src/derive/preparation/control-trend.js";
import { openNotebook } from "../../src/kernel/notebook.js";
import type { Visit } from "../../src/kernel/visit.js";
import { rule } from "../../src/validity/calibration/biological-control.js";
import { testVisit } from "./rest/visit.js";

const months = ["2025-09", "2025-10", "2025-11", "2025-12", "2026-01", "2026-02", "2026-03"];
/** A visit on 2 March 2026 with a gas exchange system whose monthly controls on the 1st read `values`. */
function visitWith(values: readonly number[]): Visit {
  const visit = testVisit({ session: { rest: { instrument: "cart" } as never } });
  const biological_controls = values.map((value, i) => ({ date: `${months[i]}-01`, measure: "vo2 at 100 W", value }));
  const cart = { kind: "gas exchange system" as const, biological_controls };
  return { ...visit, laboratory: { ...visit.laboratory, instruments: { cart } } };
}
function judged(visit: Visit) {
  const book = openNotebook();
  deriveControls(book, visit);
  return { entry: book.entry, findings: rule.judge({ visit, value: book.value, entry: book.entry }) };
}
const rows = (visit: Visit, id: "biological_controls" | "biological_control_trends") => {
  const entry = judged(visit).entry(id);
  return entry?.kind === "table" ? entry.rows : [];
};

describe("biological controls over months", () => {
  it("are listed up to the visit, each against the mean of the earlier ones", () => {
    const visit = visitWith([1.5, 1.5, 1.53, 1.5, 1.5, 1.5, 1.5]);
    expect(rows(visit, "biological_controls").map((row) => row[2])).toEqual(months.map((month) => `${month}-01`));
    expect(rows(visit, "biological_controls")[2]?.[4]).toBeCloseTo(2, 9); // by hand: 0.03 of 1.50
    const earlier = { ...visit, session: { ...visit.session, date: "2025-11-15" } };
    expect(rows(earlier, "biological_controls").length).toBe(3);
  });

  it("show a drift that stays inside the limits of each day", () => {
    const [finding, ...more] = judged(visitWith([1.5, 1.507, 1.516, 1.522, 1.53, 1.538, 1.546])).findings;
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ severity: "record" });
    expect(finding?.found).toMatch(/cart, vo2 at 100 W: 0\.5 % a month over 7 controls/);
  });

  it("say nothing of a record that only scatters", () => {
    expect(judged(visitWith([1.52, 1.48, 1.51, 1.49, 1.52, 1.48, 1.5])).findings).toEqual([]);
  });

  it("give no trend of five, and say why", () => {
    const [row] = rows(visitWith([1.5, 1.6, 1.7, 1.8, 1.9]), "biological_control_trends");
    expect(row?.[4]).toBeNull();
    expect(row?.[7]).toMatch(/six|6/);
  });

  it("write nothing where no control is recorded", () => {
    const book = openNotebook();
    deriveControls(book, testVisit());
    expect(book.entries()).toEqual([]);
  });

  it("have an interval that agrees with a textbook sum", () => {
    // By hand: y 2, 4, 5, 4, 5, 7 on x 1…6: Sxy 13.5, Sxx 17.5, slope 0.77143; rss 13.5 − 0.77143 · 13.5 = 3.08571;
    // standard error √(3.08571 / 4 / 17.5) = 0.20996; t(4) 2.7764 from a printed table
    const trend = controlTrend([
      [1, 2],
      [2, 4],
      [3, 5],
      [4, 4],
      [5, 5],
      [6, 7],
    ]);
    const month = (100 * 365.25) / 12 / 4.5;
    expect(trend.perMonth / month).toBeCloseTo(13.5 / 17.5, 9);
    expect((trend.high - trend.perMonth) / month).toBeCloseTo(2.7764 * 0.20996, 3);
  });
});
