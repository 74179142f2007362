/** Event profiles: valid by their schema, about measures that exist, each number with a source or marked as a convention. */
import { readdirSync, readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { loadedWalk } from "../../src/derive/altitude/loaded-walk.js";
import { measureInfo } from "../../src/kernel/measures.js";
import { profiles } from "./plan-for.js";

const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false });
ajv.addKeyword({ keyword: "unit" });
ajv.addSchema(JSON.parse(readFileSync("schema/blocks/confirmed.schema.json", "utf8")));
const valid = ajv.compile(JSON.parse(readFileSync("schema/event-profile.schema.json", "utf8")));

describe("event profiles", () => {
  it("there are at least four, named like their files", () => {
    expect(profiles.length).toBeGreaterThanOrEqual(4);
    const files = readdirSync("src/plan/profiles").map((file) => file.replace(".yaml", ""));
    expect(profiles.map((one) => one.id)).toEqual(files);
  });

  for (const profile of profiles)
    it(profile.id, () => {
      expect(valid(profile), JSON.stringify(valid.errors)).toBe(true);
      for (const demand of profile.demands) {
        const info = measureInfo(demand.measure);
        expect(info?.unit, demand.measure).toBeDefined();
        expect(demand.at_least ?? demand.at_most).toBeDefined();
      }
      const sources = [...profile.demands.map((one) => one.from), ...(profile.walk ? [profile.walk.from] : [])];
      for (const source of sources) expect(source).toMatch(/^convention|\b(19|20)\d\d\b|from memory/);
    });

  it("refuse what the schema does not know", () => {
    const [first] = profiles;
    expect(valid({ ...first, demands: [] })).toBe(false);
    expect(valid({ ...first, speed: 3 })).toBe(false);
  });

  it("ask for a peak that holds their own walk below it, for a client of 70 kg (load-carriage equation, 1977)", () => {
    for (const profile of profiles) {
      const { walk } = profile;
      const peak = profile.demands.find((one) => one.measure === "vo2_peak_per_mass")?.at_least;
      if (walk === undefined || peak === undefined) continue;
      expect(loadedWalk(70, walk.load_kg, walk.speed_km_h, walk.grade_pct, 1.2)).toBeLessThan(peak);
    }
  });
});
