/** The laboratory's own event profiles: used by id, and refused with a place in the file where they hold a slip. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const PROFILE = `id: ferry-crew
title: "Crew of an invented ferry"
kind: job test
demands:
  - {measure: grip_strength, at_least: 41, from: "convention: agreed with the invented company"}
notes: "Invented for this test."
`;

let copy: Copy;
afterEach(() => copy.remove());
function withProfile(text: string): Copy {
  copy = copyPractice(["c-031"]);
  mkdirSync(join(copy.root, "profiles"));
  writeFileSync(join(copy.root, "profiles/ferry-crew.yaml"), text);
  const edit = (file: string, from: string, to: string) => {
    const path = join(copy.root, file);
    writeFileSync(path, readFileSync(path, "utf8").replace(from, to));
  };
  edit("lab.yaml", "\nchoices:", "\nprofiles: [profiles/ferry-crew.yaml]\n\nchoices:");
  edit("clients/c-031/client.yaml", "profile: loaded-stair-selection", "profile: ferry-crew");
  return copy;
}

describe("own event profiles", () => {
  it("hold the client against the laboratory's demand, and rebuild when they change", () => {
    const { root, run } = withProfile(PROFILE);
    expect(run("build", "--no-report").code).toBe(0);
    const results = () => readFileSync(join(root, "clients/c-031/2026-06-01-retest/results.yaml"), "utf8");
    expect(results()).toContain("agreed with the invented company");
    expect(results()).toContain("at least 41.0");
    writeFileSync(join(root, "profiles/ferry-crew.yaml"), PROFILE.replace("41", "43"));
    run("build", "--no-report");
    expect(results()).toContain("at least 43.0");
  });

  it.each([
    ["a measure that is not known", PROFILE.replace("grip_strength", "grip_strenght"), /grip_strength/],
    ["an id that is taken", PROFILE.replace("id: ferry-crew", "id: ten-kilometre-run"), /taken/],
    ["a missing key", PROFILE.replace(/notes.*\n/, ""), /notes/],
  ])("are refused with %s", (_, text, message) => {
    const { run } = withProfile(text);
    const { code, err, out } = run("build", "--no-report");
    expect(code).toBe(1);
    expect(`${out}${err}`).toMatch(message);
    expect(`${out}${err}`).toContain("profiles/ferry-crew.yaml:");
  });
});
