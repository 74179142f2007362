/** Conditions of a visit: every key path exists in the schemas, and each word is what the session says. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { COPIED, comparisonConditions, HOURS } from "../../src/derive/conditions.js";
import type { Visit } from "../../src/kernel/visit.js";

type Schema = { properties?: Record<string, Schema>; $ref?: string; $defs?: Record<string, Schema> };
const read = (file: string): Schema => JSON.parse(readFileSync(`schema/${file}`, "utf8"));

function declared(path: string): boolean {
  let root = read("session.schema.json");
  let node: Schema | undefined = root;
  for (const key of path.split(".")) {
    node = node?.properties?.[key];
    if (node?.$ref?.startsWith("blocks/")) {
      root = read(node.$ref);
      node = root;
    } else if (node?.$ref?.startsWith("#/$defs/")) node = root.$defs?.[node.$ref.slice(8)];
    if (node === undefined) return false;
  }
  return true;
}

describe("conditions of a visit", () => {
  for (const path of [
    ...Object.values(COPIED),
    ...Object.values(HOURS).map(([p]) => p),
    "incremental.stop.reason",
    "incremental.rpe_at_end.overall",
    "incremental.rpe_at_end.scale",
    "room.inspired_gas",
    "room.fio2",
    "dxa.scanner_maker",
    "dxa.fasted",
    "incremental.protocol.name",
    "preparation.medication_today",
    "size.mass_kg",
  ])
    it(`reads a key that the session schema has: ${path}`, () => {
      expect(declared(path)).toBe(true);
    });

  const visit = (session: object, medication?: string[]) =>
    ({ session, client: { ...(medication ? { medication } : {}) } }) as unknown as Visit;

  it("leaves out what was not recorded", () => {
    expect(comparisonConditions(visit({}))).toEqual({});
  });

  it("turns hours into words, so that an hour more is no difference", () => {
    const words = (hours: number) =>
      comparisonConditions(visit({ preparation: { hours_since_caffeine: hours } })).caffeine;
    expect([words(12), words(9), words(6), words(2), words(0)]).toEqual([
      "none for 6 h",
      "none for 6 h",
      "none for 6 h",
      "within 6 h",
      "within 6 h",
    ]);
  });

  it("names a protocol without a name by what it did", () => {
    const protocol = { kind: "ramp", power_rate_w_min: 25 };
    expect(comparisonConditions(visit({ incremental: { mode: "cycle", protocol } }))).toEqual({
      mode: "cycle",
      protocol: "kind ramp, power_rate_w_min 25",
    });
  });

  it("takes medication of the day before that of the client, in any order", () => {
    expect(comparisonConditions(visit({}, ["none"])).medication).toBe("none");
    expect(
      comparisonConditions(visit({ preparation: { medication_today: ["nitrate", "diuretic"] } }, ["none"])).medication,
    ).toBe("diuretic, nitrate");
  });
});
