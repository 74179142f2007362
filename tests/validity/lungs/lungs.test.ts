/** Each rule: one session that trips it and one that just does not. */
import { describe, expect, it } from "vitest";
import { deriveLungs } from "../../../src/derive/lungs.js";
import type { Lungs } from "../../../src/kernel/generated/session.js";
import { openNotebook } from "../../../src/kernel/notebook.js";
import type { Rule } from "../../../src/kernel/rule.js";
import { rule as conditions } from "../../../src/validity/lungs/spirometry-conditions.js";
import { rule as manoeuvres } from "../../../src/validity/lungs/spirometry-manoeuvres.js";
import { rule as parts } from "../../../src/validity/lungs/spirometry-parts.js";
import { rule as repeatability } from "../../../src/validity/lungs/spirometry-repeatability.js";
import { visitOf } from "../../derive/visit-of.js";

const judged = (rule: Rule, lungs?: Lungs) => {
  const visit = visitOf(lungs === undefined ? {} : { lungs });
  const book = openNotebook();
  deriveLungs(book, visit);
  return rule.judge({ visit, value: book.value, entry: book.entry });
};
const blow = (fvc_l: number, fev1_l: number, acceptable: boolean | undefined = true) => ({
  fvc_l,
  fev1_l,
  ...(acceptable === undefined ? {} : { acceptable }),
});
type Blows = NonNullable<Lungs["manoeuvres"]>;
const session = (list: readonly Blows[number][], more: Partial<Lungs> = {}): Lungs => ({
  volumes_at: "BTPS",
  posture: "sitting",
  nose_clip: true,
  bronchodilator: "before",
  manoeuvres: list as Blows,
  ...more,
});
const three = [blow(5, 4), blow(5, 4), blow(5, 4)] satisfies Blows;

describe("spirometry rules", () => {
  it.each([repeatability, manoeuvres, conditions, parts])("$id is silent without the block", (rule) => {
    expect(judged(rule)).toEqual([]);
    expect(judged(rule, {})).toEqual([]);
  });
  it("repeatability: 0.151 L trips, 0.150 L does not", () => {
    expect(judged(repeatability, session([blow(5, 4), blow(5, 4.151), blow(5, 3)]))).toMatchObject([
      { severity: "weakens", found: "the two largest FEV1 are 0.151 L apart", limit: "0.150 L" },
    ]);
    expect(judged(repeatability, session([blow(5, 4.1), blow(5, 4.25), blow(5.15, 3)]))).toEqual([]);
    expect(judged(repeatability, session([blow(5, 4), blow(5.2, 4), blow(4, 4)]))).toMatchObject([
      { affects: ["fvc", "fev1_fvc"] },
    ]);
  });
  it("manoeuvres: two acceptable trip, three do not, and silence about them is a finding", () => {
    expect(judged(manoeuvres, session([...three.slice(1), blow(5, 4, false)]))).toMatchObject([
      { severity: "weakens", found: "2 of 3 manoeuvres" },
    ]);
    expect(judged(manoeuvres, session(three))).toEqual([]);
    expect(judged(manoeuvres, session([...three, { fvc_l: 5, fev1_l: 4 }]))).toMatchObject([
      { found: "not recorded for 1 of 4 manoeuvres" },
    ]);
  });
  it("conditions: each missing one is named; after a bronchodilator weakens", () => {
    expect(judged(conditions, session(three))).toEqual([]);
    expect(judged(conditions, { volumes_at: "BTPS", manoeuvres: three })).toMatchObject([
      { severity: "record", found: "not recorded: posture, nose clip, bronchodilator" },
    ]);
    expect(judged(conditions, session(three, { bronchodilator: "after" }))).toMatchObject([{ severity: "weakens" }]);
  });
  it("parts: FEV1 above FVC is fatal, equal is not", () => {
    expect(judged(parts, session([blow(4, 4.01)]))).toMatchObject([
      { severity: "fatal", affects: ["fev1", "fvc", "fev1_fvc"] },
    ]);
    expect(judged(parts, session([blow(4, 4)]))).toEqual([]);
  });
});
