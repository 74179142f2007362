/** Conditions before a resting measurement as remarks. */
import { expect, it } from "vitest";
import { rule as conditions } from "../../../src/validity/preparation/resting-conditions.js";
import { rule as recorded } from "../../../src/validity/preparation/resting-conditions-recorded.js";
import { testVisit } from "../../derive/rest/visit.js";
import { derivedFindings } from "../findings.js";

const met = {
  hours_since_food: 10,
  hours_since_caffeine: 12,
  hours_since_alcohol: 24,
  nicotine: "never",
  hours_since_exercise: 24,
  hours_since_hard_exercise: 48,
  settling_min: 30,
  posture: "supine",
} as const;
const findings = (preparation: object, temperature_c = 23) =>
  derivedFindings(
    testVisit({
      session: { rest: { typed: {}, behaviour: "quiet and awake" }, preparation, room: { temperature_c } },
    }),
  );

it("is silent when all conditions are met", () => {
  expect(conditions.judge(findings(met))).toEqual([]);
  expect(recorded.judge(findings(met))).toEqual([]);
});
it("names each condition just outside its limit (Fullmer 2015: 7 h of fast, 4 h without caffeine; 22 to 25 °C)", () => {
  const found = (change: object, temperature?: number) =>
    conditions.judge(findings({ ...met, ...change }, temperature)).map((f) => f.found);
  expect(found({ hours_since_food: 6.9 })).toEqual(["Fast: 6.9 h"]);
  expect(found({ hours_since_food: 7 })).toEqual([]);
  expect(found({ hours_since_caffeine: 3.9 })).toEqual(["Caffeine: 3.9 h"]);
  expect(found({ settling_min: 19 })).toEqual(["Rest before the test: 19 min"]);
  expect(found({ settling_min: 20 })).toEqual([]);
  expect(found({ posture: "seated" })).toEqual(["Posture: seated"]);
  expect(found({}, 21.9)).toEqual(["Room temperature: 21.9 °C"]);
  expect(found({}, 25)).toEqual([]);
});
it("says what was not recorded", () => {
  const { hours_since_caffeine: _, ...without } = met;
  expect(recorded.judge(findings(without))[0]?.found).toMatch(/caffeine not recorded/);
});
