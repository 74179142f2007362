/**
 * The societies' list of what a report of an exercise test holds (ATS/ACCP 2003; Radtke and others 2019 and others, as
 * collected in the source pack), item by item.
 */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseAllDocuments } from "yaml";
import { openReporter } from "../../src/report/render.js";
import { ITEMS } from "../../src/report/view/checklist.js";
import { assets, inputOf } from "./assets.js";
import { retest } from "./fixture.js";

/** How each item of the list, by its first words, is asked in the report; [] = printed for every visit or drawn for every test. */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  "client id": [],
  "height, mass": ["stature", "body_mass", "body_mass_index"],
  "referral question or goal": ["purpose"],
  "medication (beta": ["medication"],
  "symptoms, activity": ["activity", "screening"],
  "diagnosis/contra": ["screening", "consent"],
  "resting HR": ["resting_heart_rate", "resting_pressure", "electrocardiogram"],
  "spirometry FEV1": ["spirometry", "ventilation_capacity"],
  haemoglobin: ["haemoglobin"],
  "time of day": ["time_of_day", "food", "caffeine", "last_training"],
  "mode and ergometer": ["mode", "handrail"],
  "analyser type": ["gas_analyser"],
  "ambient temperature": ["pressure"],
  "mask/mouthpiece": ["gas_analyser"],
  "averaging window": ["averaging", "left_out"],
  "name, stage": ["protocol", "stages", "phases"],
  "exercise duration": ["duration"],
  "recovery mode": ["recovery_mode", "phases"],
  "reason for stopping": ["stop_reason", "exertion"],
  "RER peak": ["exchange_ratio", "heart_rate", "heart_rate_share"],
  "plateau yes": ["plateau", "verification"],
  "lactate post": ["lactate_after"],
  "overall statement": ["statement"],
  "VO2peak L/min": ["uptake", "uptake_per_mass"],
  "peak work rate": ["work"],
  METs: ["uptake_per_mass"],
  "VO2/WR slope": ["uptake_on_work"],
  VT1: ["threshold", "threshold_share", "threshold_heart_rate", "threshold_work", "threshold_methods"],
  "RCP/VT2": ["second_threshold"],
  "lactate thresholds": ["lactate_thresholds"],
  "HR rest/peak": ["heart_rate", "chronotropic", "recovery"],
  "O2 pulse": ["oxygen_pulse", "oxygen_pulse_course"],
  "BP rest": ["resting_pressure", "exercise_pressure"],
  ECG: ["electrocardiogram"],
  "HR/VO2 slope": ["uptake_on_heart_rate"],
  VEpeak: ["ventilation", "breathing_reserve"],
  "VT, f at peak": ["breathing_frequency", "means"],
  "VE/VCO2 slope": ["ventilation_slope", "lowest_equivalent"],
  "PETCO2, PETO2": ["means"],
  "SpO2 rest": ["saturation", "blood_gases"],
  OUES: ["efficiency_slope"],
  "nine-panel": ["means"],
  "raw-data plot": ["means"],
  "comparison with previous": [],
  "answer to the referral": ["purpose", "statement"],
  "safety notes": ["events"],
  "name and credential": ["reporter"],
};
const SOURCE = "../shared/reference/exercise-test.yaml";

const text = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>|<svg[\s\S]*?<\/svg>/g, " ")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ");

describe("the checklist of an exercise test", () => {
  it.skipIf(!existsSync(SOURCE))(`asks for every item of the list (skipped where ${SOURCE} is absent)`, () => {
    const list = parseAllDocuments(readFileSync(SOURCE, "utf8"))
      .map((document) => document.toJS() as { id?: string; sections?: { items: unknown[] }[] })
      .find((one) => one.id === "cpet-report-checklist");
    const items = (list?.sections ?? []).flatMap((section) => section.items.map(String));
    expect(items.length).toBeGreaterThan(40);
    for (const item of items) {
      const key = Object.keys(ASKED).find((start) => item.startsWith(start));
      expect(key, item).toBeDefined();
      for (const asked of ASKED[key ?? ""] ?? []) expect(ITEMS, item).toHaveProperty(asked);
    }
  });

  it("has a place or a line 'not recorded' in the practitioner edition for each of its items", async () => {
    const input = inputOf("practitioner");
    const page = text(await openReporter(assets).renderReport(input));
    const words = (input.words as { checklist: Record<string, string> }).checklist;
    const names = new Set([...retest.entries.map((entry) => entry.id), ...Object.keys(retest.conditions)]);
    for (const [item, ids] of Object.entries(ITEMS)) {
      const own = ids.some(
        (id) =>
          names.has(id) ||
          (id.startsWith("client.") && Object.hasOwn(input.client, id.slice(7))) ||
          (id.startsWith("choices.") && Object.hasOwn(retest.choices, id.slice(8))),
      );
      expect(page.includes(`${words[item]} Not recorded.`), `${item}: ${words[item]}`).toBe(!own);
    }
  });

  it("is not asked of a visit without an exercise test", async () => {
    const entries = retest.entries.filter((entry) => ["age", "stature", "body_mass"].includes(entry.id));
    const page = text(
      await openReporter(assets).renderReport(inputOf("practitioner", "en", { ...retest, entries }, [])),
    );
    expect(page).not.toContain("Breathing reserve Not recorded");
  });
});
