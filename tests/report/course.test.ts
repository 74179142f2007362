/** The course of measures over visits in the practitioner's report: values, and where conditions changed. */
import { describe, expect, it } from "vitest";
import type { Change, Table } from "../../src/kernel/measure.js";
import { openReporter } from "../../src/report/render.js";
import { assets, inputOf } from "./assets.js";
import { baseline, retest } from "./fixture.js";

const middle = { ...baseline, date: "2026-04-10", label: "middle", purpose: "retest" } as const;
const trend: Table = {
  kind: "table",
  id: "trend_vo2_peak_per_mass",
  columns: ["date", "value", "differs"].map((key) => ({
    key,
    title: key,
    ...(key === "value" ? { unit: "mL/kg/min", decimals: 1 } : {}),
  })),
  rows: [
    ["2026-03-02", 40.3, ""],
    ["2026-04-10", 42, "averaging window (30 s, now 20 s)"],
    ["2026-05-18", 43.9, ""],
  ],
  origin: { kind: "key", key: "results" },
};
const again = retest.entries.find((entry): entry is Change => entry.kind === "change");
const since = { ...again, id: "change_vo2_peak_per_mass_since_2026_04_10", since: "2026-04-10" } as Change;
const results = { ...retest, entries: [...retest.entries, since, trend] };
const html = async (language: string) => {
  const page = await openReporter(assets).renderReport(inputOf("practitioner", language, results, [baseline, middle]));
  return page.replace(/<style>[\s\S]*?<\/style>/, "");
};

describe("three visits in the practitioner's report", () => {
  it("mark the value whose conditions differ from the visit before, and say what differs", async () => {
    const page = await html("en");
    const table = /<table id="table-course"[\s\S]*?<\/div>/.exec(page)?.[0] ?? "";
    expect(table).toMatch(/<td class=n>40\.3<\/td><td class=n>42\.0\*<\/td><td class=n>43\.9<\/td>/);
    expect(table).toContain(
      "* Conditions differ from the visit before. 10 Apr 2026: averaging window (30 s, now 20 s).",
    );
    expect(page).toContain("Since the visit of 10 April 2026");
  });
  it("name the ground of a worthwhile change", async () => {
    expect(await html("en")).toMatch(
      /Worthwhile is a change of 1\.00.mL\/kg\/min: 0\.2 of the spread between people\./,
    );
  });
  it("does so in German", async () => {
    const page = await html("de");
    expect(page).toContain("42,0*");
    expect(page).toContain("Seit dem Termin vom 10. April 2026");
  });
  it("says once what differs where two visits are not comparable", async () => {
    const because = "Body mass went from 62.6 kg to 61.9 kg. What differs: scale (one, now two).";
    const change = {
      ...since,
      id: "change_body_mass",
      measure: "body_mass",
      primary: true,
      differs: ["scale (one, now two)"],
      verdict: "not comparable",
      because,
    };
    const entries = [...retest.entries.filter((entry) => entry.id !== "change_body_mass"), change];
    const page = await openReporter(assets).renderReport(
      inputOf("practitioner", "en", { ...retest, entries }, [baseline]),
    );
    const told = /<div class="told">[\s\S]*?<\/div>/.exec(page)?.[0] ?? "";
    expect(told.split("scale (one, now two)")).toHaveLength(2);
  });
});
