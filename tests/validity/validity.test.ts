import { describe, expect, it } from "vitest";
import type { Entry, Quantity, Remark } from "../../src/kernel/measure.js";
import type { Finding, Rule } from "../../src/kernel/rule.js";
import { validity } from "../../src/validity/validity.js";
import { visitOf } from "../derive/visit-of.js";

const from = (...measures: string[]): Quantity["origin"] => ({
  kind: "formula",
  formula: "invented r1",
  inputs: measures.map((measure) => ({ name: measure, text: "", measure })),
});
const number = (
  id: string,
  value: number,
  origin: Quantity["origin"] = { kind: "key", key: "session.yaml" },
): Entry => ({
  kind: "quantity",
  id,
  value,
  unit: "kg",
  decimals: 1,
  origin,
});
const rule = (id: string, ...found: Finding[]): Rule => ({
  id,
  revision: 2,
  title: "Invented",
  section: "size",
  source: { authors: "invented", year: null, title: "invented", where: "test", verified: "own" },
  judge: () => found,
});
const finding = (severity: Finding["severity"], affects: Finding["affects"]): Finding => ({
  severity,
  found: "the scales read 3 kg when empty",
  limit: "0.1 kg",
  because: "Whatever they read is off.",
  affects,
});
const entries: Entry[] = [
  number("body_mass", 82.44),
  number("stature", 178),
  number("body_mass_index", 26.01, from("body_mass", "stature")),
  number("waist", 88),
  {
    kind: "judgement",
    id: "blood_pressure_class",
    verdict: "heavy",
    because: "invented",
    inputs: [{ name: "b", text: "", measure: "body_mass_index" }],
  },
  { kind: "table", id: "size_readings", columns: [], rows: [["kept"]], origin: from("body_mass"), note: "As read." },
];
const run = (...rules: Rule[]) => validity(entries, visitOf({}), rules);
const get = (found: readonly Entry[], id: string) => found.find((e) => e.id === id);

describe("validity", () => {
  it("changes nothing without a finding", () => expect(run(rule("quiet"))).toEqual(entries));
  it("adds a remark and leaves the values where a finding only weakens", () => {
    const found = run(rule("scales-drift", finding("weakens", ["body_mass"])));
    expect(found.slice(0, entries.length)).toEqual(entries);
    expect(found.at(-1)).toMatchObject({
      kind: "remark",
      id: "remark_scales_drift",
      rule: "scales-drift r2",
      found: "the scales read 3 kg when empty",
      affects: ["body_mass"],
    });
  });
  it("withholds what a fatal finding touches and what was computed from it, through every step", () => {
    const found = run(rule("scales-drift", finding("fatal", ["body_mass"])));
    expect(get(found, "body_mass")).toEqual({
      kind: "not given",
      id: "body_mass",
      because: "withheld, because the scales read 3 kg when empty; asked for: 0.1 kg",
    });
    expect(get(found, "body_mass_index")?.kind).toBe("not given");
    expect(get(found, "blood_pressure_class")).toMatchObject({ kind: "not given" });
    expect((get(found, "blood_pressure_class") as { because: string }).because).toContain("rests on body mass");
    expect(get(found, "stature")?.kind).toBe("quantity");
    expect(get(found, "waist")?.kind).toBe("quantity");
  });
  it("loses no number: the remark keeps them, once, and tables stay", () => {
    const found = run(
      rule("scales-drift", finding("fatal", ["body_mass"])),
      rule("scales-late", finding("fatal", ["body_mass"])),
    );
    const remarks = found.filter((e): e is Remark => e.kind === "remark");
    expect(remarks[0]?.found).toContain("Body mass 82.4 kg; Body mass index 26.0 kg; Blood pressure class: heavy");
    expect(remarks[1]?.found).not.toContain("82.4");
    expect(get(found, "size_readings")).toMatchObject({ kind: "table", rows: [["kept"]] });
    expect((get(found, "size_readings") as { note: string }).note).toMatch(/^As read\. Not to be used: withheld/);
  });
  it("numbers several findings of one rule", () => {
    const found = run(rule("twice", finding("record", []), finding("record", [])));
    expect(found.slice(-2).map((e) => e.id)).toEqual(["remark_twice", "remark_twice_2"]);
  });
  it("ends where entries name each other in a ring", () => {
    const ring = [number("waist", 1, from("hip")), number("hip", 2, from("waist"))];
    const found = validity(ring, visitOf({}), [rule("ring", finding("fatal", ["hip"]))]);
    expect(found.slice(0, 2).map((e) => e.kind)).toEqual(["not given", "not given"]);
  });
  it("shows every rule the values before anything was withheld, so their order does not matter", () => {
    const reads: Rule = {
      ...rule("reads"),
      judge: ({ value }) => (value("body_mass") === undefined ? [] : [finding("record", ["body_mass"])]),
    };
    const kills = rule("kills", finding("fatal", ["body_mass"]));
    expect(run(kills, reads).some((e) => e.id === "remark_reads")).toBe(true);
    expect(run(reads, kills).some((e) => e.id === "remark_reads")).toBe(true);
  });
});
