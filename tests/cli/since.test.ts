/** What a change since a Git revision can touch, and a number explained as a page. */
import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { chainPage } from "../../src/cli/chain-page.js";
import { touched } from "../../src/cli/since.js";
import { copyPractice } from "./practice-copy.js";

const client = (id: string, ...names: string[]) => ({
  id,
  path: `clients/${id}`,
  visits: names.map((name) => ({ path: `clients/${id}/${name}`, client: id, name })),
});
const practice = {
  root: ".",
  clients: [client("c-001", "2026-01-01-baseline", "2026-03-01-retest"), client("c-002", "2026-02-01-baseline")],
};
const reached = (...paths: string[]) => [...touched(practice, paths)].map((path) => path.slice("clients/".length));

describe("touched", () => {
  it("reaches the client's later visits, all visits of a client, or all clients", () => {
    expect(reached("clients/c-001/2026-03-01-retest/ramp.csv")).toEqual(["c-001/2026-03-01-retest"]);
    expect(reached("clients/c-001/2026-01-01-baseline/session.yaml")).toEqual([
      "c-001/2026-01-01-baseline",
      "c-001/2026-03-01-retest",
    ]);
    expect(reached("clients/c-002/client.yaml")).toEqual(["c-002/2026-02-01-baseline"]);
    expect(reached("lab.yaml")).toHaveLength(3);
    expect(reached("retests/vo2.csv")).toHaveLength(3);
    expect(reached("report/partials/note.hbs")).toHaveLength(3);
  });
  it("passes over reports and what is no record", () => {
    expect(reached("README.md", "clients/c-001/2026-01-01-baseline/report.html", "clients/index.html")).toEqual([]);
  });
});

describe("build --since", () => {
  it("takes committed and uncommitted changes, and refuses what is no revision", () => {
    const copy = copyPractice(["c-044"]);
    const git = (...words: string[]) =>
      spawnSync("git", ["-c", "user.name=a", "-c", "user.email=a@example.invalid", ...words], { cwd: copy.root });
    expect(copy.run("build", "--no-report", "--since", "HEAD").err).toMatch(/is not in a Git repository/);
    git("init", "-q");
    git("add", "-A");
    git("commit", "-qm", "All");
    expect(copy.run("build", "--no-report", "--since", "HEAD").out).toMatch(/^0 of 0 visits built\.\n$/);
    const path = join(copy.root, "clients/c-044/2026-06-08-retest/session.yaml");
    writeFileSync(path, `${readFileSync(path, "utf8")}\n# looked through\n`);
    expect(copy.run("build", "--no-report", "--since", "HEAD").out).toMatch(
      /2026-06-08-retest {2}new\n[\s\S]*1 of 1 visits built\.\n$/,
    );
    expect(copy.run("build", "--since", "nowhere")).toMatchObject({ code: 2 });
    expect(copy.run("build", "--since", "--output=x")).toMatchObject({ code: 2 });
    copy.remove();
  });
});

describe("chainPage", () => {
  it("is one file without scripts or requests, and shows text as text", () => {
    const link = {
      id: "x",
      title: "<b>X</b>",
      found: '5 "kg"',
      given: [],
      norms: ["<i>"],
      remarks: [],
      inputs: [
        {
          id: "y",
          title: "Y",
          found: "2",
          given: [{ name: "a", text: "<script>" }],
          norms: [],
          remarks: [],
          inputs: [],
        },
      ],
    };
    const page = chainPage(link, "clients/c-001/2026-01-01");
    expect(page).not.toMatch(/<script|<b>|<i>|https?:|src=/);
    expect(page).toContain("default-src 'none'");
    expect(page.match(/<details open>/g)).toHaveLength(1);
  });
});
