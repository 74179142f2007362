/** Hints that a visit's folder could tell who the client is. Invented names. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { personalFiles } from "../../src/cli/personal-files.js";
import { filesOf } from "../../src/cli/practice.js";
import { copyPractice } from "./practice-copy.js";

const path = "clients/c-001/2026-03-02-baseline";
let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "personal-"));
  mkdirSync(join(root, path), { recursive: true });
});
afterEach(() => rmSync(root, { recursive: true }));
const found = (files: Readonly<Record<string, string | Uint8Array>>, remarks: readonly string[] = []) => {
  for (const [name, content] of Object.entries(files)) writeFileSync(join(root, path, name), content);
  const visit = { path, client: "c-001", name: "2026-03-02-baseline" };
  const practice = { root, clients: [] };
  return personalFiles(practice, visit, filesOf(practice, visit), "1984-09-14", remarks).map(
    (d) => `${d.at.file.split("/").at(-1)}: ${d.found}`,
  );
};

describe("personalFiles", () => {
  it.each([
    ["Quilla_Marrowby.csv", "a name"],
    ["QuillaMarrowby-ramp.csv", "a name"],
    ["quilla@example.org.csv", "an e-mail address"],
    ["ramp-14.09.1984.csv", "birth date"],
    ["ramp_19840914.csv", "birth date"],
  ])("warns of %s", (name, what) => {
    expect(found({ [name]: "" })[0]).toContain(what);
  });

  it("is quiet about files as instruments and people name them, and about what the build writes", () => {
    const names = [
      "treadmill.csv",
      "rest.csv",
      "2026-03-02_ramp-20W.csv",
      "beats.txt",
      "Ramp Test.csv",
      "VO2max-Test.csv",
      "session.yaml",
      "report-client.pdf",
    ];
    expect(found(Object.fromEntries(names.map((name) => [name, ""])))).toEqual([]);
  });

  it("looks into pictures for what cameras and scanners write there", () => {
    expect(found({ "scan.dcm": Buffer.concat([Buffer.alloc(128), Buffer.from("DICM")]) })[0]).toContain(
      "patient's name",
    );
    expect(
      found({ "foot.jpg": Buffer.from("\xff\xd8Exif\0Artist\0Somebody", "latin1") }).find((f) => f.startsWith("foot")),
    ).toContain("author");
    expect(found({ "plain.png": Buffer.from("\x89PNG\r\n", "latin1") }).filter((f) => f.startsWith("plain"))).toEqual(
      [],
    );
  });

  it("finds the birth date in a remark", () => {
    expect(found({}, ["Born 14.9.1984, first visit."])).toEqual([
      "session.yaml: a remark holds the client's birth date",
    ]);
    expect(found({}, ["First visit on 2026-03-02."])).toEqual([]);
  });

  it("is a warning of check that stops nothing", () => {
    const copy = copyPractice(["c-044"]);
    writeFileSync(join(copy.root, "clients/c-044/2026-03-30-baseline/Quilla_Marrowby.txt"), "");
    const { code, err } = copy.run("check");
    expect(code).toBe(0);
    expect(err).toMatch(/warning looks-personal {3}clients\/c-044\/2026-03-30-baseline\/Quilla_Marrowby\.txt/);
    expect(err).toMatch(/Fix {7}rename the file, and its name in the session/);
    copy.remove();
  });
});
