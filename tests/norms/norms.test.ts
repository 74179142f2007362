/** The stage: which tables a value is held against, second bands near a birthday, editions, listing. */
import { describe, expect, it } from "vitest";
import type { ReferenceTable } from "../../src/kernel/generated/reference-table.js";
import type { Manoeuvre } from "../../src/kernel/generated/session.js";
import type { Entry, Quantity } from "../../src/kernel/measure.js";
import { faultsOf } from "../../src/norms/check-table.js";
import { listTables } from "../../src/norms/list-tables.js";
import { norms } from "../../src/norms/norms.js";
import { personOf } from "../../src/norms/person.js";
import { neighbourIn, percentileCurve, positionIn } from "../../src/norms/position.js";
import { visitOf } from "../derive/visit-of.js";
import { builtInTables } from "./built-in-tables.js";

const tables = builtInTables();
const byId = (id: string) => tables.find((t) => t.id === id) as ReferenceTable;
const quantity = (id: string, value: number, unit: string, decimals: number): Quantity => ({
  kind: "quantity",
  id,
  value,
  unit,
  decimals,
  origin: { kind: "key", key: "session.yaml test" },
});
const body: Entry[] = [quantity("stature", 178, "cm", 1), quantity("body_mass", 80, "kg", 1)];
const treadmill = { incremental: { mode: "treadmill" as const } };
const uptake = quantity("vo2_peak_per_mass", 45, "mL/kg/min", 1);
const normsOf = (entries: readonly Entry[], id: string) => {
  const entry = entries.find((e) => e.id === id);
  return entry?.kind === "quantity" ? entry.norms : undefined;
};

describe("norms", () => {
  const man = { sex: "male" as const, ageYears: 35.5 };
  it("gives percentile and prediction, each with its table", () => {
    const visit = visitOf(treadmill, man);
    const found = normsOf(norms([...body, uptake], visit, tables), "vo2_peak_per_mass");
    expect(found?.map((n) => n.table)).toEqual(["vo2peak-predicted-myers-2017", "vo2peak-treadmill-kaminsky-2015"]);
    const [predicted, percentile] = found ?? [];
    // By hand: 50 + 25·(45.0 − 42.4)/(49.2 − 42.4)
    expect(percentile?.percentile).toBeCloseTo(59.56, 2);
    expect(percentile?.group).toBe("men 30 to 39 years, treadmill");
    // Percent of predicted never stands without z where a standard error exists.
    expect(predicted?.percentPredicted).toBeDefined();
    expect(predicted?.z).toBeDefined();
  });
  it("changes no entry and adds one table of curves", () => {
    const before = [...body, uptake];
    const after = norms(before, visitOf(treadmill, man), tables);
    expect(before[2]).toEqual(uptake);
    const curves = after.find((e) => e.id === "reference_percentiles");
    expect(curves?.kind === "table" && curves.rows.length).toBe(1);
  });
  it("reports why the reference refused, once", () => {
    const found = normsOf(
      norms([...body, uptake], visitOf({ incremental: { mode: "rowing" } }, man), tables),
      "vo2_peak_per_mass",
    );
    expect(found).toHaveLength(1);
    expect(found?.[0]?.notGiven).toMatch(/rowing/);
  });
  it("follows the choice, and names an edition it does not have", () => {
    const other = visitOf(treadmill, { ...man, choices: { vo2_reference: "registry-2022" } });
    expect(normsOf(norms([...body, uptake], other, tables), "vo2_peak_per_mass")?.map((n) => n.table)).toContain(
      "vo2peak-treadmill-men-kaminsky-2022",
    );
    const unknown = visitOf(treadmill, { ...man, choices: { vo2_reference: "rowers" } });
    const found = normsOf(norms([...body, uptake], unknown, tables), "vo2_peak_per_mass");
    expect(found?.some((n) => n.notGiven?.includes("rowers"))).toBe(true);
  });
  it("uses a laboratory's own table when lab.yaml chooses it", () => {
    const own: ReferenceTable = {
      ...byId("vo2peak-treadmill-kaminsky-2015"),
      id: "rowers",
      choice: { vo2_reference: ["rowers"] },
      applies: { sex: ["male"], age_years: [20, 39], exercise_mode: ["rowing"] },
      columns: ["age_from", "age_to", "p10", "p50", "p90"],
      values: { male: [[20, 39, 45, 55, 65]] },
      checks: [
        {
          given: { sex: "male", age_years: 30, value: 55, exercise_mode: "rowing" },
          expect: { percentile: 50 },
          from: "row 1",
        },
      ],
      verified: "own",
    };
    expect(faultsOf(own)).toEqual([]);
    const visit = visitOf({ incremental: { mode: "rowing" } }, { ...man, choices: { vo2_reference: "rowers" } });
    const found = normsOf(
      norms([quantity("vo2_peak_per_mass", 60, "mL/kg/min", 1)], visit, [...tables, own]),
      "vo2_peak_per_mass",
    );
    expect(found?.[0]).toMatchObject({ table: "rowers", percentile: 70 });
  });
  it("holds a table against every measure it names", () => {
    const visit = visitOf({ mobility: { single_leg_stance: { eyes: "open" } } }, { ageYears: 65 });
    const legs = [quantity("single_leg_stance_left", 20, "s", 1), quantity("single_leg_stance_right", 30, "s", 1)];
    const after = norms(legs, visit, tables);
    for (const { id } of legs) expect(normsOf(after, id)?.[0]).toMatchObject({ predicted: 26.9 });
    expect(normsOf(after, "single_leg_stance_left")?.[0]?.percentile).toBeUndefined();
  });
  it("says nothing where the chosen edition has no table for a measure", () => {
    const visit = visitOf({ dxa: { scanner_maker: "hologic" } }, { sex: "male", ageYears: 40 });
    expect(
      normsOf(norms([quantity("bone_mineral_content", 2.7, "kg", 2)], visit, tables), "bone_mineral_content"),
    ).toBeUndefined();
  });
  it("names each table that came near", () => {
    const visit = visitOf({ dxa: { scanner_maker: "other" } }, { sex: "male", ageYears: 40 });
    const found = normsOf(norms([quantity("fat_mass_index", 6, "kg/m²", 1)], visit, tables), "fat_mass_index");
    expect(found?.[0]?.notGiven).toMatch(/hologic only.*ge-lunar only/);
  });
  it("converts to the measure's unit", () => {
    const visit = visitOf({ incremental: { mode: "cycle" } }, { sex: "male", ageYears: 40 });
    const found = normsOf(norms([...body, quantity("vo2_peak", 2.5, "L/min", 2)], visit, tables), "vo2_peak");
    // By hand: 79.92·35.84 + 6·0.08 = 2864.8 mL/min
    expect(found?.[0]?.predicted).toBeCloseTo(2.8648, 4);
    expect(found?.[0]?.z).toBeUndefined();
    expect(found?.[0]?.note).toMatch(/No standard error/);
  });
});

describe("lungs", () => {
  const lungs = {
    volumes_at: "BTPS" as const,
    bronchodilator: "before" as const,
    manoeuvres: [{ fvc_l: 4.6, fev1_l: 3.0, acceptable: true }] as [Manoeuvre],
  };
  const positions = (id: string, choices = {}) => {
    const visit = visitOf({ lungs }, { sex: "male", ageYears: 40, choices });
    const values = [
      ...body,
      quantity("fev1", 3, "L", 2),
      quantity("fvc", 4.6, "L", 2),
      quantity("fev1_fvc", 3 / 4.6, "ratio", 2),
    ];
    return normsOf(norms(values, visit, tables), id);
  };
  it("come with z, lower limit and percent of predicted, without asking for a group", () => {
    const [fev1, ...others] = positions("fev1") ?? [];
    expect(others).toEqual([]);
    // Reference script on the published coefficients: predicted 3.999 L, lower limit 3.064 L at 40 years and 178 cm.
    expect(fev1?.predicted).toBeCloseTo(3.999, 3);
    expect(fev1?.lowerLimit).toBeCloseTo(3.064, 3);
    expect(fev1?.percentPredicted).toBeCloseTo((100 * 3) / 3.999, 1);
    expect(fev1?.z).toBeLessThan(-1.645); // 3.0 L lies below the lower limit
    expect(positions("fev1_fvc")?.[0]?.z).toBeLessThan(-1.645);
    expect(positions("fvc")?.[0]?.z).toBeGreaterThan(-1.645);
  });
  it("ask for the group where a legacy edition is split by one", () => {
    const nhanes = { lung_reference: "nhanes-1999" as const };
    expect(positions("fev1", nhanes)?.[0]?.notGiven).toMatch(/population group was not recorded/);
    const [stated] = positions("fev1", { ...nhanes, population_group: "white" }) ?? [];
    expect(stated?.predicted).toBeCloseTo(4.224, 3); // by hand: 0.5536 − 0.5212 − 0.2752 + 0.00014098·31684
    expect(stated?.z).toBeUndefined();
  });
});

describe("second band", () => {
  const table = byId("vo2peak-treadmill-kaminsky-2015");
  const at = (ageYears: number) =>
    neighbourIn(table, { sex: "male", ageYears, facts: { exercise_mode: "treadmill" } }, 40)?.group;
  it.each([
    [38.9, undefined],
    [39, "men 40 to 49 years, treadmill"],
    [39.9, "men 40 to 49 years, treadmill"],
    [40, "men 30 to 39 years, treadmill"],
    [40.9, "men 30 to 39 years, treadmill"],
    [41, undefined],
    [20, undefined],
    [79.5, undefined],
  ])("at %d years: %s", (age, group) => expect(at(age)).toBe(group));
});

describe("classes", () => {
  const classAt = (id: string, sex: "female" | "male", value: number, facts: Record<string, string | number>) =>
    positionIn(byId(id), { sex, ageYears: 40, facts }, value).category;
  it("name the guideline and agree with the printed number", () => {
    const facts = { pregnant: "no" };
    expect(classAt("bmi-classes-who-2000", "male", 24.949, facts)).toBe("WHO 2000: normal range");
    expect(classAt("bmi-classes-who-2000", "male", 24.95, facts)).toBe("WHO 2000: pre-obese (overweight)");
  });
  it("say so where the page leaves a gap", () => {
    expect(classAt("vo2max-classes-men-astrand-1960", "male", 30, { exercise_mode: "cycle" })).toBe(
      "Classes after Åstrand 1960: between two printed classes",
    );
  });
});

describe("percentileCurve", () => {
  it("gives the printed points of a table and the inverse of a curve", () => {
    const table = byId("vo2peak-treadmill-kaminsky-2015");
    const curve = percentileCurve(table, { sex: "female", ageYears: 45, facts: { exercise_mode: "treadmill" } });
    expect(curve).toEqual([
      [5, 17],
      [10, 18.8],
      [25, 22.1],
      [50, 26.7],
      [75, 32.4],
      [90, 38.4],
      [95, 41.7],
    ]);
  });
});

describe("listTables", () => {
  it("says of each table whom it is for, and of a person why it does not apply", () => {
    const visit = visitOf(treadmill, { sex: "male", ageYears: 35 });
    const list = listTables(tables, personOf(visit, body), visit.choices);
    expect(list).toHaveLength(tables.length);
    const cycle = list.find((t) => t.id === "vo2peak-cycle-men-kaminsky-2022");
    expect(cycle).toMatchObject({ covers: expect.stringContaining("20 to 89 years"), chosen: true });
    expect(cycle?.refusals?.[0]).toMatch(/cycle only/);
    expect(list.find((t) => t.id === "vo2peak-treadmill-kaminsky-2015")?.refusals).toEqual([]);
    expect(list.find((t) => t.id === "vo2peak-treadmill-men-kaminsky-2022")?.chosen).toBe(false);
  });
});

describe("faultsOf", () => {
  const sound = byId("vo2peak-treadmill-kaminsky-2015");
  type Rows = (string | number | null)[][];
  const rows = (sound.values?.male ?? []) as Rows;
  const withRows = (male: Rows) => ({ ...sound, values: { ...sound.values, male } }) as ReferenceTable;
  it.each([
    ["a gap", withRows(rows.filter((_, i) => i !== 2)), /begins at 50 years where 40 was due/],
    ["an end too early", withRows(rows.slice(0, -1)), /end before 79 years/],
    [
      "a slip of a digit",
      withRows(rows.map((r, i) => (i === 0 ? [20, 29, 29, 32.1, 40.1, 84, 55.2, 61.8, 66.3] : r))),
      /55.2 stands after 84/,
    ],
    ["a short row", withRows(rows.map((r, i) => (i === 0 ? r.slice(0, -1) : r))), /8 cells for 9 columns/],
    [
      "a check that fails",
      {
        ...sound,
        checks: [
          {
            given: { sex: "male" as const, age_years: 25, value: 48, exercise_mode: "treadmill" },
            expect: { percentile: 60 },
            from: "wrong on purpose",
          },
        ],
      },
      /percentile should be 60, but is 50/,
    ],
    [
      "classes without a guideline",
      (({ guideline: _g, ...rest }) => rest)(byId("bmi-classes-who-2000")) as ReferenceTable,
      /guideline/,
    ],
  ])("finds %s", (_name, table, message) => expect(faultsOf(table as ReferenceTable).join("\n")).toMatch(message));
});
