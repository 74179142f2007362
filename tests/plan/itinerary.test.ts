/** Nights of an ascent: 900 m more to sleep above 3000 m is flagged with the night and the limit (CDC Travelers' Health; WMS 2019). */
import { expect, it } from "vitest";
import { derive } from "../../src/derive/derive.js";
import { because, judgement, table, visitOf } from "../derive/visit-of.js";

const nights = (nights_m: readonly number[], start_m = 190) =>
  derive(
    visitOf(
      {},
      {
        client: {
          plan: {
            itinerary: { start_m, nights_m: [...nights_m] as [number], earlier_altitude_illness: "none or mild" },
          },
        },
      },
    ),
  );

it("flags a sleeping jump of 900 m above 3000 m with its night and the rule", () => {
  const entries = nights([2440, 2700, 3100, 4000, 4000]);
  expect(judgement(entries, "ascent_judgement")?.verdict).toBe("beyond a published limit");
  expect(because(entries, "ascent_judgement")).toMatch(/Night 4 \(.*900 m.*500 m/);
  const row = table(entries, "ascent_schedule")?.rows[3];
  expect(row?.slice(0, 3)).toEqual([4, 4000, 900]);
  expect(String(row?.[3])).toMatch(/500 m/);
});

it("flags none where every night keeps to the limits", () => {
  const entries = nights([2700, 3100, 3500, 3500, 3900], 100);
  expect(judgement(entries, "ascent_judgement")?.verdict).toBe("inside the published limits");
});
