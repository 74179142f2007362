/** A laboratory's own table: the same schema and the same checks, with the place of each fault. */
import { readFileSync } from "node:fs";
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
    ["a decimal comma", text.replace("[30, 39, 38", '[30, 39, "38,5"'), undefined, 'holds "38,5" under', 13],
    ["a check that fails", text.replace("percentile: 50", "percentile: 40"), undefined, "should be 40, but is 50", 18],
  ])("finds %s", (_name, changed, file, found, line) => {
    const [first] = faults(changed, file);
    expect(first?.found).toContain(found);
    expect(first?.at.line).toBe(line);
  });
  it.each([
    ["18.5", '"18.5" under lower: a limit with its sign, such as ">= 18.5", or null is due'],
    ["< x", '"< x" under upper'],
    ["> 5 < 6", '"> 5 < 6" under'],
    ["≥ 25", '"≥ 25" under'],
  ])("takes no limit of a class for one without a sign that is known: %s", (limit, found) => {
    const classes = readFileSync("src/norms/tables/bmi-classes-who-2000.yaml", "utf8").replace(
      "id: bmi-",
      "id: own-bmi-",
    );
    const at = found.includes("lower") || limit.includes("25") ? '">= 18.5"' : '"< 16.0"';
    const document = readYaml("norms/own-bmi-classes-who-2000.yaml", classes.replace(at, `"${limit}"`));
    const both = ownTableFaults(document, []).map((fault) => fault.found);
    expect(both).toHaveLength(2); // women and men
    expect(both[0]).toContain(found);
  });
  it("takes no spread of nothing", () => {
    const curve = readFileSync("src/norms/tables/dxa-fat-percent-kirk-2021.yaml", "utf8");
    const [row = ""] = /- \[.*?\]/.exec(curve.slice(curve.indexOf("\nvalues:"))) ?? [];
    const cells = row.split(",");
    const document = readYaml(
      "norms/dxa-fat-percent-kirk-2021.yaml",
      curve.replace(row, [cells[0], cells[1], " 0", ...cells.slice(3)].join(",")),
    );
    expect(ownTableFaults(document, [])[0]?.found).toMatch(/under (?:S|sigma): a number above 0 is due$/);
  });
});
