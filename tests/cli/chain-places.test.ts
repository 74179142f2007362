/** A chain's ends as file:line, held against the line the key really stands on. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { chainOf, type Link } from "../../src/cli/chain.js";
import { type Documents, placeOf, withPlaces } from "../../src/cli/chain-places.js";
import { formulas } from "../../src/formulas.generated.js";
import { readYaml } from "../../src/read/yaml.js";
import { readResults } from "../../src/results/read.js";
import { copyPractice, EXAMPLE } from "./practice-copy.js";

const text =
  "waymark: session 1\nsize:\n  stature_cm: 178\n  mass_kg: [72.1, 72.2]\nlactate:\n  steps:\n    - {power_w: 100}\n";
const documents = { "session.yaml": readYaml("visit/session.yaml", new TextEncoder().encode(text)) };

describe("places of a chain's ends", () => {
  it.each([
    ["session.yaml size.mass_kg", "visit/session.yaml:4"],
    ["session.yaml lactate.steps.0.power_w", "visit/session.yaml:7"],
    ["session.yaml lactate.steps.9", "visit/session.yaml:6"], // no such step: the nearest thing above it
    ["session.yaml hip_cm", undefined],
    ["client.yaml birth_date", undefined], // not read
    ["definition", undefined],
  ])("%s", (key, place) => expect(placeOf(key, documents)).toBe(place));

  it("reach the inputs below", () => {
    const end: Link = {
      id: "b",
      title: "b",
      found: "",
      given: [{ name: "session.yaml size.mass_kg", text: "72" }],
      norms: [],
      remarks: [],
      inputs: [],
    };
    const link = withPlaces({ ...end, id: "a", given: [], key: "session.yaml size", inputs: [end] }, documents);
    expect(link.at).toBe("visit/session.yaml:2");
    expect(link.inputs[0]?.given[0]?.at).toBe("visit/session.yaml:4");
  });

  it("are printed by explain, at the line where the key stands", () => {
    const copy = copyPractice(["c-044"], true);
    try {
      const visit = "clients/c-044/2026-03-30-baseline";
      const lines = readFileSync(`${EXAMPLE}/${visit}/session.yaml`, "utf8").split("\n");
      const line = lines.findIndex((text) => /^\s+grip: /.test(text)) + 1;
      expect(line).toBeGreaterThan(1);
      expect(copy.run("explain", visit, "grip_strength").out).toContain(`(${visit}/session.yaml:${line})`);
    } finally {
      copy.remove();
    }
  });

  it("are there for every number, judgement and table of the examples", () => {
    const lost: string[] = [];
    for (const client of readdirSync(`${EXAMPLE}/clients`))
      for (const visit of readdirSync(`${EXAMPLE}/clients/${client}`)) {
        const folder = `clients/${client}/${visit}`;
        if (!existsSync(`${EXAMPLE}/${folder}/results.yaml`)) continue;
        const read = (path: string) => readYaml(path, readFileSync(`${EXAMPLE}/${path}`));
        const files: Documents = {
          "session.yaml": read(`${folder}/session.yaml`),
          "client.yaml": read(`clients/${client}/client.yaml`),
          "lab.yaml": read("lab.yaml"),
        };
        const results = readResults(readFileSync(`${EXAMPLE}/${folder}/results.yaml`, "utf8"));
        for (const { id, kind } of results.entries) {
          if (kind === "not given" || kind === "remark") continue;
          const chain = chainOf(results, id, formulas);
          if (chain === undefined || !reaches(withPlaces(chain, files))) lost.push(`${folder} ${id}`);
        }
      }
    expect(lost).toEqual([]);
  });
});

const reaches = (link: Link): boolean =>
  link.at !== undefined ||
  (link.read?.length ?? 0) > 0 ||
  link.given.some((given) => given.at !== undefined || given.name === "series") ||
  link.inputs.some(reaches);
