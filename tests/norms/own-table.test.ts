/** A laboratory's own table: the same schema and the same checks, with the place of each fault. */
import { describe, expect, it } from "vitest";
import { ownTableFaults } from "../../src/norms/own-table.js";
import { readYaml } from "../../src/read/yaml.js";
import { ownTable as text } from "./own-table-text.js";

const faults = (changed: string, file = "norms/rowers.yaml") => ownTableFaults(readYaml(file, changed), ["taken"]);

describe("ownTableFaults", () => {
  it("accepts a sound table", () => expect(faults(text)).toEqual([]));
  it.each([
    ["a name that is not the file's", text, "norms/sailors.yaml", "rowers", 1],
    ["an id that is taken", text.replace("id: rowers", "id: taken"), "norms/taken.yaml", "taken", 1],
    ["a measure that does not exist", text.replace("vo2_peak_per_mass", "vo2_peek"), undefined, "vo2_peek", 3],
    ["a gap", text.replace("[30, 39, 38", "[31, 39, 38"), undefined, "begins at 31 years where 30 was due", 13],
    ["a check that fails", text.replace("percentile: 50", "percentile: 40"), undefined, "should be 40, but is 50", 18],
  ])("finds %s", (_name, changed, file, found, line) => {
    const [first] = faults(changed, file);
    expect(first?.found).toContain(found);
    expect(first?.at.line).toBe(line);
  });
});
