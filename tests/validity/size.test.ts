import { rule as clothing } from "../../src/validity/size/scale-clothing.js";
import { rule as duplicates } from "../../src/validity/size/size-duplicates.js";
import { rule as plausible } from "../../src/validity/size/size-plausible.js";
import { rule as site } from "../../src/validity/size/waist-site.js";
import { check } from "./findings-of.js";

check(duplicates, [
  ["absent block", {}, []],
  ["read once", { size: { mass_kg: 80 } }, ["record"]],
  // by hand: 0.8 of 80.4 is 0.995 %; 0.82 of 80.41 is 1.02 %
  ["just within 1 %", { size: { mass_kg: [80, 80.8] } }, []],
  ["beyond 1 %", { size: { mass_kg: [80, 80.82] } }, ["weakens"]],
  ["exactly 1 %", { size: { stature_cm: [199, 201] } }, []],
  ["beyond 1 % with a third", { size: { mass_kg: [80, 82, 80.1] } }, []],
]);
check(site, [
  ["no waist", { size: { mass_kg: 80 } }, []],
  ["site missing", { size: { waist_cm: 80 } }, ["weakens: not recorded"]],
  ["site given", { size: { waist_cm: 80, waist_site: "midpoint" } }, []],
]);
check(clothing, [
  ["not recorded", { size: { mass_kg: 80 } }, ["record: not recorded"]],
  ["light", { size: { mass_kg: 80, clothing: "light" } }, []],
  ["ordinary", { size: { mass_kg: 80, clothing: "ordinary" } }, ["weakens"]],
]);
check(plausible, [
  ["index of 60", { size: { mass_kg: 60 * 2.25, stature_cm: 150 } }, []],
  ["index above 60", { size: { mass_kg: 136, stature_cm: 150 } }, ["weakens"]],
  ["index of 14", { size: { mass_kg: 56, stature_cm: 200 } }, []],
  ["index below 14", { size: { mass_kg: 55.9, stature_cm: 200 } }, ["weakens"]],
  ["no index", { size: { mass_kg: 55 } }, []],
]);
