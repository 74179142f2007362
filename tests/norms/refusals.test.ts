/** Every way out of a table is refused with its reason, and nothing is extrapolated. */

import { describe, expect, it } from "vitest";
import type { ReferenceTable } from "../../src/kernel/generated/reference-table.js";
import { roundTo } from "../../src/kernel/rounding.js";
import { lmsFor } from "../../src/norms/lms-parameters.js";
import { FACTS, type Person } from "../../src/norms/person.js";
import { neighbourIn, percentileCurve, positionIn } from "../../src/norms/position.js";
import { percentileOf, sideOf, trustedRange } from "../../src/norms/trusted-range.js";
import fc from "../tools/properties.js";
import { builtInTables } from "./built-in-tables.js";
import { personFor } from "./person-for.js";

const tables = builtInTables();
const byId = (id: string) => tables.find((t) => t.id === id) as ReferenceTable;
const NUMBERS = ["percentile", "z", "predicted", "percentPredicted", "lowerLimit", "median", "category"] as const;

/** A refusal gives a reason and no number at all, and draws no strip. */
function refused(table: ReferenceTable, person: Person, reason: RegExp | string): void {
  const position = positionIn(table, person, 10);
  expect(position.notGiven, `${table.id}: ${JSON.stringify(person)}`).toMatch(reason);
  for (const key of NUMBERS) expect(position[key]).toBeUndefined();
  expect(percentileCurve(table, person)).toEqual([]);
  expect(neighbourIn(table, person, 10)).toBeUndefined();
}

describe("each table refuses", () => {
  for (const table of tables)
    it(table.id, () => {
      const [low, high] = table.applies.age_years as [number, number];
      const sex = table.applies.sex[0] as Person["sex"];
      const inside = personFor(table, sex, low);
      expect(positionIn(table, inside, 10).notGiven, "the lowest age is answered").toBeUndefined();
      expect(
        positionIn(table, personFor(table, sex, high), 10).notGiven,
        "the highest age is answered",
      ).toBeUndefined();
      refused(table, { ...inside, ageYears: low - 0.01 }, `ages ${low} to ${high}`);
      refused(table, { ...inside, ageYears: high + 1 }, `ages ${low} to ${high}`);
      if (table.applies.sex.length === 1)
        refused(table, { ...inside, sex: sex === "female" ? "male" : "female" }, /women only|men only/);
      const { sex: _s, age_years: _a, ...rest } = table.applies;
      for (const [fact, limit] of Object.entries(rest)) {
        const { [fact]: _gone, ...others } = inside.facts;
        refused(table, { ...inside, facts: others }, /not recorded/);
        const [first, last] = limit;
        const wrong =
          typeof first === "number" ? [first - 0.1, (last as number) + 0.1] : ["another kind", "", "unknown"];
        for (const value of wrong)
          refused(
            table,
            { ...inside, facts: { ...inside.facts, [fact]: value } },
            FACTS[fact as keyof typeof FACTS].name,
          );
      }
    });
});

describe("named refusals", () => {
  const man = (ageYears: number, facts: Person["facts"] = {}): Person => ({ sex: "male", ageYears, facts });
  const woman = (ageYears: number, facts: Person["facts"] = {}): Person => ({ sex: "female", ageYears, facts });
  it.each([
    ["vo2peak-treadmill-kaminsky-2015", man(35, { exercise_mode: "cycle" }), "treadmill only"],
    ["vo2peak-treadmill-kaminsky-2015", man(35), "mode of the incremental test was not recorded"],
    ["vo2peak-treadmill-kaminsky-2015", man(19.9, { exercise_mode: "treadmill" }), "the age is 19.9"],
    ["vo2peak-treadmill-kaminsky-2015", man(80, { exercise_mode: "treadmill" }), "20 to 79"],
    ["vo2peak-cycle-men-kaminsky-2022", woman(35, { exercise_mode: "cycle" }), "men only"],
    ["grip-germany-age-steiber-2016", man(35, { dynamometer: "hydraulic" }), "spring only"],
    ["grip-germany-stature-men-steiber-2016", man(35, { dynamometer: "spring", stature_cm: 159 }), "160 to 200 cm"],
    ["grip-germany-stature-women-steiber-2016", woman(35, { dynamometer: "spring" }), "stature was not recorded"],
    ["dxa-lean-mass-index-ofenheimer-2020", man(35, { scanner_maker: "hologic" }), "ge-lunar only"],
    ["dxa-fat-percent-kirk-2021", man(79.5, { scanner_maker: "hologic" }), "18 to 79"],
    ["limb-lean-index-limit-ewgsop2-2019", man(59, { scanner_maker: "hologic" }), "60 to 120"],
    ["push-ups-women-csep-2003", woman(30, { push_up_form: "standard" }), "modified only"],
    ["leg-press-ratio-cooper-2002", man(30, { leg_press_machine: "sled-45-degrees" }), "seated-machine only"],
    ["single-leg-stance-springer-2007", man(30, { stance_eyes: "closed" }), "open only"],
    ["waist-classes-who-2008", man(30, { pregnant: "no", waist_site: "narrowest" }), "midpoint only"],
    ["bmi-classes-who-2000", woman(30, { pregnant: "yes" }), "does not hold in pregnancy"],
    ["waist-to-height-classes-nice-2022", man(30, { pregnant: "no", body_mass_index: 35 }), "10 to 34.99"],
    ["spirometry-fev1-gli-global-2022", man(17.9, { bronchodilator: "before", stature_cm: 178 }), "18 to 90"],
    ["spirometry-fev1-gli-global-2022", man(40, { bronchodilator: "after", stature_cm: 178 }), "before only"],
    ["vo2peak-predicted-myers-2017", man(40, { exercise_mode: "treadmill" }), "body mass was not recorded"],
    ["vo2peak-predicted-cycle-hansen-1984", man(40, { exercise_mode: "cycle", stature_cm: 178 }), "body mass was not"],
  ])("%s", (id, person, reason) => refused(byId(id), person, reason));
  it("says every reason at once", () => {
    const position = positionIn(byId("vo2peak-cycle-men-kaminsky-2022"), woman(19, { exercise_mode: "rowing" }), 40);
    expect(position.notGiven).toMatch(/men only.*20 to 89.*cycle only/);
  });
});

describe("nothing is extrapolated", () => {
  it("answers at the edge of what a distribution is trusted for, and names the side a step beyond", () => {
    const trusted = (low: number, high: number) => ({ report_percentiles: [low, high] }) as unknown as ReferenceTable;
    // The median is percentile 50 exactly.
    expect(percentileOf(trusted(50, 95), 0)).toEqual({ percentile: 50 });
    expect(percentileOf(trusted(5, 50), 0)).toEqual({ percentile: 50 });
    expect(sideOf(trusted(50, 95), 0)).toBeUndefined();
    expect(percentileOf(trusted(50, 95), -0.01)).toEqual({});
    expect(sideOf(trusted(50, 95), -0.01)).toMatch(/Below/);
    expect(sideOf(trusted(5, 50), 0.01)).toMatch(/Above/);
  });
  it("keeps every percentile inside what the table is good for, whatever the value", () => {
    for (const table of tables) {
      const sex = table.applies.sex[0] as Person["sex"];
      const person = personFor(table, sex, (table.applies.age_years[0] as number) + 1);
      const printed = percentileCurve(table, person);
      const [low, high] =
        table.kind === "percentile-table"
          ? [printed[0]?.[0] as number, printed[printed.length - 1]?.[0] as number]
          : trustedRange(table);
      fc.assert(
        fc.property(fc.double({ min: 1e-6, max: 1e5, noNaN: true }), (value) => {
          const { percentile, note } = positionIn(table, person, value);
          if (percentile !== undefined) {
            expect(percentile).toBeGreaterThanOrEqual(low);
            expect(percentile).toBeLessThanOrEqual(high);
          } else if (printed.length > 0 && table.kind !== "quantile-bands") expect(note).toMatch(/Below|Above/);
        }),
        { numRuns: 30 },
      );
    }
  });
  it("rises with the value", () => {
    for (const table of tables) {
      const sex = table.applies.sex[0] as Person["sex"];
      const person = personFor(table, sex, (table.applies.age_years[0] as number) + 1);
      const curve = percentileCurve(table, person);
      const [first, last] = [curve[0]?.[1], curve[curve.length - 1]?.[1]];
      if (first === undefined || last === undefined || table.kind === "quantile-bands") continue;
      // A recorded value has at most four decimals; two numbers a last bit apart are none that anybody compares.
      const inside = fc.double({ min: first, max: last, noNaN: true }).map((x) => roundTo(x, 4));
      fc.assert(
        fc.property(inside, inside, (a, b) => {
          const [pa, pb] = [positionIn(table, person, a).percentile, positionIn(table, person, b).percentile];
          if (pa !== undefined && pb !== undefined && a < b) expect(pa).toBeLessThanOrEqual(pb);
        }),
        { numRuns: 30 },
      );
    }
  });
  it("gives no L, M and S past the first and last row", () => {
    const table = byId("dxa-fat-mass-index-ofenheimer-2020");
    const at = (ageYears: number) => lmsFor(table, personFor(table, "male", ageYears));
    expect(at(18)).toEqual({ M: 4.58, S: 0.43, L: -0.309 });
    expect(at(81)).toEqual({ M: 9.161, S: 0.278, L: 0.37 });
    expect(at(17.999)).toBeUndefined();
    expect(at(81.001)).toBeUndefined();
  });
});
