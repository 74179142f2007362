/** Which saves are told, on disks that tell of changes and on those that are only looked at. */
import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { afterEach, describe, expect, it } from "vitest";
import { watchChanges } from "../../src/cli/watch/changes.js";

const visit = "clients/c-001/2026-03-02-baseline";
let root = "";
let stop = () => {};
afterEach(() => {
  stop();
  rmSync(root, { recursive: true, force: true });
});

describe.each([
  ["told by the disk", false],
  ["looked for", true],
])("changes %s", (_, poll) => {
  it("are told for inputs, also new ones and renamed ones, and not for what a build writes", async () => {
    root = mkdtempSync(join(tmpdir(), "changes-"));
    mkdirSync(join(root, visit), { recursive: true });
    writeFileSync(join(root, "lab.yaml"), "a: 1\n");
    writeFileSync(join(root, visit, "session.yaml"), "a: 1\n");
    let told = 0;
    stop = watchChanges(root, poll, () => {
      told++;
    });
    const isTold = async (act: () => void) => {
      await wait(50);
      const before = told;
      act();
      for (let i = 0; i < 40 && told === before; i++) await wait(50);
      await wait(poll ? 50 : 100);
      return told > before;
    };
    expect(await isTold(() => writeFileSync(join(root, visit, "session.yaml"), "a: 22\n"))).toBe(true);
    expect(await isTold(() => writeFileSync(join(root, "lab.yaml"), "a: 333\n"))).toBe(true);
    expect(await isTold(() => writeFileSync(join(root, visit, "ramp.csv"), "t\n1\n"))).toBe(true);
    expect(
      await isTold(() => {
        writeFileSync(join(root, visit, "session.yaml~"), "a: 4444\n");
        renameSync(join(root, visit, "session.yaml~"), join(root, visit, "session.yaml"));
      }),
    ).toBe(true);
    const before = told;
    for (const name of ["results.yaml", "report.html", "report-client.pdf", ".session.yaml.swp", "session.yaml~"])
      writeFileSync(join(root, visit, name), "x");
    await wait(poll ? 1000 : 200);
    expect(told).toBe(before);
    const later = "clients/c-002/2026-04-01-baseline";
    await isTold(() => mkdirSync(join(root, later), { recursive: true }));
    expect(
      await isTold(() => {
        writeFileSync(join(root, later, "session.yaml"), "a: 1\n");
      }),
    ).toBe(true);
  });
});
