/**
 * No network. A build with PDF is traced by the system: of all sockets that program and browser open, none leads off
 * the machine. Where the system cannot trace, it runs in a network namespace that has no network at all.
 */
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { caseList } from "./case-list.js";
import { PROGRAM } from "./running.js";

const home = mkdtempSync(join(tmpdir(), "no-network-"));
const cases = caseList("network");
afterAll(() => {
  cases.write();
  rmSync(home, { recursive: true, force: true });
});

const works = (program: string, ...words: string[]) => spawnSync(program, words).status === 0;
const traces = works("strace", "-f", "-e", "trace=connect", "true");
const isolates = works("unshare", "-n", "true");

function practice(name: string): string {
  const root = join(home, name);
  cpSync("examples/skarn-point", root, {
    recursive: true,
    filter: (path) => !/\.waymark|results\.yaml$|\.(html|pdf)$|clients\/c-0(17|23|31)/.test(path),
  });
  return root;
}
const pdfsIn = (root: string) =>
  readdirSync(root, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".pdf"));

describe("building", () => {
  it.skipIf(!traces)(
    "opens no connection to another machine (needs strace)",
    () => {
      const root = practice("traced");
      const log = join(home, "trace");
      const { status, stderr } = spawnSync(
        "strace",
        [
          "-f",
          "-qq",
          "-o",
          log,
          "-e",
          "trace=connect,sendto,sendmsg,bind,listen",
          "-e",
          "signal=none",
          process.execPath,
          PROGRAM,
          "build",
        ],
        { cwd: root, encoding: "utf8" },
      );
      expect(stderr).toBe("");
      expect(status).toBe(0);
      expect(pdfsIn(root)).toHaveLength(6);
      const lines = readFileSync(log, "utf8").split("\n");
      const inet = lines.filter((line) => /sa_family=AF_INET6?/.test(line));
      const away = inet.filter(
        (line) => !/sin_addr=inet_addr\("(?:127\.|0\.0\.0\.0)|inet_pton\(AF_INET6, "::1?"/.test(line),
      );
      expect(away).toEqual([]);
      // Nor does it wait for anybody: the browser is spoken to through a pipe.
      expect(
        lines.filter(
          (line) =>
            /\blisten\(/.test(line) &&
            /= 0$/.test(line) &&
            inet.some((l) => l.includes("bind(") && l.split(" ")[0] === line.split(" ")[0]),
        ),
      ).toEqual([]);
      cases.add(
        "build of two visits with PDF, traced",
        `${lines.length} socket calls, ${inet.length} on an internet address, ${away.length} of them off this machine`,
      );
    },
    120_000,
  );

  it.skipIf(!isolates)(
    "works where there is no network at all (needs the right to make a network namespace)",
    () => {
      const root = practice("isolated");
      const { status, stderr, pid } = spawnSync("unshare", ["-n", process.execPath, PROGRAM, "build"], {
        cwd: root,
        encoding: "utf8",
      });
      expect(stderr).toBe("");
      expect(status).toBe(0);
      expect(pdfsIn(root)).toHaveLength(6);
      expect(readdirSync(tmpdir()).filter((name) => name.startsWith(`waymark-browser-${pid}-`))).toEqual([]);
      cases.add("build of two visits with PDF, without any network", "6 PDF files written, no browser profile left");
    },
    120_000,
  );
});
