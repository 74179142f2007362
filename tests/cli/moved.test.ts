import { describe, expect, it } from "vitest";
import { moved, movedChoices, movesText } from "../../src/cli/moved.js";
import type { Entry } from "../../src/kernel/measure.js";
import type { Results } from "../../src/kernel/results.js";

const mass = (value: number): Entry => ({
  kind: "quantity",
  id: "body_mass",
  value,
  unit: "kg",
  decimals: 1,
  origin: { kind: "key", key: "session.yaml size.mass_kg" },
});
const index = (value: number, massText: string, revision = 1): Entry => ({
  kind: "quantity",
  id: "body_mass_index",
  value,
  unit: "kg/m²",
  decimals: 1,
  origin: {
    kind: "formula",
    formula: `body-mass-index r${revision}`,
    inputs: [
      { name: "body_mass", text: massText, measure: "body_mass" },
      { name: "stature", text: "175.0 cm", measure: "stature" },
    ],
  },
});
const results = (entries: Entry[], more: Partial<Results> = {}): Results => ({
  client: "c-017",
  sex: "female",
  date: "2026-03-02",
  purpose: "baseline",
  ageYears: 41,
  sources: [{ file: "session.yaml", sha256: "a" }],
  choices: { peak_window_s: 30 } as Results["choices"],
  conditions: {},
  entries,
  ...more,
});

describe("what moved and why", () => {
  const before = results([mass(74), index(24.2, "74.0 kg")]);

  it("names a choice that is not what was recorded, for the build to say", () => {
    const choices = (lactate_definition: string) =>
      results([], { choices: { peak_window_s: 30, lactate_definition } as Results["choices"] });
    expect(movedChoices(choices("fixed-4"), choices("fixed-2"))).toEqual([
      "lactate_definition: fixed-4 is now fixed-2",
    ]);
    expect(movedChoices(choices("fixed-4"), choices("fixed-4"))).toEqual([]);
  });

  it("finds nothing between equals", () => expect(moved(before, before)).toEqual([]));

  it("follows every move to the one edited key", () => {
    const moves = moved(before, results([mass(72), index(23.5, "72.0 kg")]));
    expect(moves.map((m) => [m.id, m.before, m.after])).toEqual([
      ["body_mass", "74.0 kg", "72.0 kg"],
      ["body_mass_index", "24.2 kg/m²", "23.5 kg/m²"],
    ]);
    expect(new Set(moves.flatMap((m) => m.causes))).toEqual(new Set(["session.yaml size.mass_kg was edited"]));
    expect(movesText(moves, false)).toBe(
      "  session.yaml size.mass_kg was edited\n    body_mass        74.0 kg → 72.0 kg\n    body_mass_index  24.2 kg/m² → 23.5 kg/m²",
    );
  });

  it("names a revised formula", () => {
    const [move] = moved(before, results([mass(74), index(24.3, "74.0 kg", 2)]));
    expect(move?.causes).toEqual(["formula body-mass-index r1 is now body-mass-index r2"]);
  });

  it("names a changed choice when nothing nearer explains the move", () => {
    const after = results([mass(74), index(24.9, "74.0 kg")], { choices: { peak_window_s: 20 } as Results["choices"] });
    expect(moved(before, after)[0]?.causes).toEqual(["choice peak_window_s: 30 is now 20"]);
  });

  it("names a value that is no longer given", () => {
    const after = results([
      mass(74),
      { kind: "not given", id: "body_mass_index", because: "stature was not measured" },
    ]);
    expect(moved(before, after)[0]).toMatchObject({ before: "24.2 kg/m²", after: "not given" });
  });

  it("says what moved where both sides read alike", () => {
    const table = (cell: number): Entry => ({
      kind: "table",
      id: "size_readings",
      columns: [{ key: "a", title: "A" }],
      rows: [[1], [cell]],
      origin: { kind: "key", key: "session.yaml size" },
    });
    const judged = (because: string): Entry => ({ kind: "judgement", id: "plateau", verdict: "cannot tell", because });
    const moves = moved(results([table(2), judged("x")]), results([table(3), judged("y")]));
    expect(moves.map((m) => m.after)).toEqual(["1 row differs", "same, for another reason"]);
  });

  it("escapes cells of a review table", () => {
    const moves = moved(results([]), results([{ kind: "judgement", id: "waist_site", verdict: "a|b", because: "x" }]));
    expect(movesText(moves, true)).toContain("| absent | a\\|b |");
  });
});
