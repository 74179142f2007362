/** The laboratory's own error: the verb that shows it, and repeated visits that feed it. */
import { cpSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const copies: Copy[] = [];
const practice = () => {
  const copy = copyPractice(["c-044"]);
  copies.push(copy);
  return copy;
};
afterAll(() => {
  for (const copy of copies) copy.remove();
});

const retestFile = (copy: Copy, name: string, measure: string, pairs: readonly (readonly [number, number])[]) => {
  const lab = join(copy.root, "lab.yaml");
  const text = readFileSync(lab, "utf8");
  writeFileSync(lab, text.replace(/^retests:\n/m, `retests:\n  - {measure: ${measure}, file: retests/${name}.csv}\n`));
  mkdirSync(join(copy.root, "retests"), { recursive: true });
  const rows = pairs.map(([test, retest]) => `${test},${retest}`);
  writeFileSync(join(copy.root, `retests/${name}.csv`), `test,retest\n${rows.join("\n")}\n`);
};

/** Five pairs printed with their result: differences 5, −2, 6, 0, −3 (Hopkins 2000, Sports Med 30:1–15). */
const HOPKINS = [
  [62, 67],
  [78, 76],
  [81, 87],
  [55, 55],
  [66, 63],
] as const;

describe("waymark retests", () => {
  it("gives the typical error of Hopkins' five pairs, 2.9 kg, and says that five are few", () => {
    const copy = practice();
    retestFile(copy, "mass", "body_mass", HOPKINS);
    const { code, out } = copy.run("retests", "body_mass");
    expect(code).toBe(0);
    expect(out).toMatch(/Typical error of one test +2\.89, 95 % limits 1\.73 to 8\.30 kg/);
    expect(out).toMatch(/fewer than ten/);
    const [data] = JSON.parse(copy.run("retests", "body_mass", "--json").out);
    expect(data).toMatchObject({ measure: "body_mass", unit: "kg", n: 5, df: 4, file: "retests/mass.csv" });
    // By hand: √(Σd²/2n) = √(74/10) = 2.720; least significant change 2.77 times that.
    expect(data.rootMeanSquareSd).toBeCloseTo(2.7203, 4);
    expect(data.leastSignificantChange).toBeCloseTo(7.5352, 3);
  });

  it("points at one pair of 89 and 11, and at learning", () => {
    const copy = practice();
    const learned = Array.from({ length: 12 }, (_, i) => [50 + 3 * i, 53 + 3 * i + (i % 3)] as const);
    retestFile(copy, "slip", "push_ups", [...learned, [89, 11]]);
    expect(copy.run("retests", "push_ups").out).toMatch(/Pair 13 \(89 and 11\) differs far more than the others/);
    retestFile(copy, "learned", "sit_and_reach", learned);
    const { out } = copy.run("retests", "sit_and_reach");
    expect(out).toMatch(/The retest was on average higher: learning/);
    expect(out).not.toMatch(/slip of the pen/);
  });

  it("writes one page without scripts or outside requests, with a drawing and its data", () => {
    const copy = practice();
    retestFile(copy, "mass", "body_mass", HOPKINS);
    expect(copy.run("retests", "--html", "error.html").code).toBe(0);
    const page = readFileSync(join(copy.root, "error.html"), "utf8");
    const html = page.replace(/<style>[\s\S]*<\/style>/, "");
    expect(html).not.toMatch(/<script|src="http|href="http|url\(http/);
    expect(html).toMatch(/<svg/);
    expect(html).toMatch(/<td class="?n"?>\+5\.0<\/td>/);
    expect(html).not.toMatch(/undefined|NaN|\{\w+\}</);
    expect(page.length).toBeLessThan(250_000);
  });

  it("makes its page in the practice's own partials, words and style", () => {
    const copy = practice();
    retestFile(copy, "mass", "body_mass", HOPKINS);
    const put = (name: string, text: string) => {
      mkdirSync(join(copy.root, "report", name, ".."), { recursive: true });
      writeFileSync(join(copy.root, "report", name), text);
    };
    put("partials/head.hbs", "<header><h1>» {{head.title}}</h1></header>");
    put("words/en.yaml", "retests:\n  title: Our own noise\nmeasures:\n  body_mass: Weight\n");
    put("theme.css", "h1 { letter-spacing: 0.033em; }");
    expect(copy.run("retests", "body_mass", "--html", "error.html")).toMatchObject({ code: 0 });
    const page = readFileSync(join(copy.root, "error.html"), "utf8");
    expect(page).toContain("<h1>» Our own noise</h1>");
    expect(page).toMatch(/<h2[^>]*>Weight/);
    expect(page).toMatch(/letter-spacing: 0\.033em; }\s*<\/style>/);
    put("theme.css", "h1 {\n");
    const broken = copy.run("retests", "body_mass", "--html", "error.html");
    expect(broken.code).toBe(1);
    expect(broken.err).toMatch(/report\/theme\.css:1: a { is never closed/);
    expect(readFileSync(join(copy.root, "error.html"), "utf8")).toBe(page);
  });

  it("exits 1 for a faulty file with its line, and for a measure without pairs; says why there is no error", () => {
    const copy = practice();
    retestFile(copy, "mass", "body_mass", HOPKINS);
    writeFileSync(join(copy.root, "retests/mass.csv"), "test,retest\n62,67\n78,seven\n");
    const faulty = copy.run("retests");
    expect(faulty.code).toBe(1);
    expect(faulty.err).toMatch(/retests\/mass\.csv:3/);
    writeFileSync(join(copy.root, "retests/mass.csv"), "test,retest\n62,67\n");
    expect(copy.run("retests", "body_mass").out).toMatch(/cannot be computed, because there is one pair only/);
    expect(copy.run("retests", "grip_strength")).toMatchObject({ code: 1 });
    expect(copy.run("retests", "grip_strength").err).toMatch(/has no test-retest pairs here/);
  });
});

const errorLines = (results: string) => results.match(/.*(?:laboratory retests, |A single test varies).*/g) ?? [];

/** A client like c-044 under another id, with a visit repeated three days after the baseline. */
function repeatedClient(copy: Copy, id: string, massKg: number): string {
  const clients = join(copy.root, "clients");
  cpSync(join(clients, "c-044"), join(clients, id), { recursive: true });
  const baseline = join(clients, id, "2026-03-30-baseline");
  const repeat = join(clients, id, "2026-04-02-reliability");
  cpSync(baseline, repeat, { recursive: true });
  renameSync(join(clients, id, "2026-06-08-retest"), join(clients, id, ".left-out"));
  for (const file of [join(clients, id, "client.yaml"), join(baseline, "session.yaml"), join(repeat, "session.yaml")])
    writeFileSync(file, readFileSync(file, "utf8").replaceAll("c-044", id));
  const text = readFileSync(join(repeat, "session.yaml"), "utf8")
    .replace("date: 2026-03-30", "date: 2026-04-02")
    .replace(/^label: .*$/m, "label: reliability")
    .replace(/^purpose: .*$/m, "purpose: reliability")
    .replace(/mass_kg: \[[^\]]*\]/, `mass_kg: [${massKg}, ${massKg}]`)
    .replace(
      /systolic_mmhg: (\d+)/g,
      (_, pressure) => `systolic_mmhg: ${Number(pressure) + Math.round(massKg * 10 - 889)}`,
    );
  expect(text).toMatch(/^date: 2026-04-02$/m);
  writeFileSync(join(repeat, "session.yaml"), text);
  return join(repeat, "session.yaml");
}

describe("visits with the purpose reliability", () => {
  it("feed the error of every client, from the session files, and rebuild them when they change", () => {
    const copy = practice();
    const files = [88.6, 89.4, 88.8].map((mass, i) => repeatedClient(copy, `c-90${i}`, mass));
    expect(copy.run("build", "--no-report", "--debug")).toMatchObject({ code: 0, err: "" });
    // By hand: differences from 88.9 are −0.3, 0.5, −0.1; SD 0.4163; over √2 = 0.294.
    const [data] = JSON.parse(copy.run("retests", "body_mass", "--json").out);
    expect(data).toMatchObject({ n: 3, daysBetween: "3" });
    expect(data.typicalError).toBeCloseTo(0.2944, 4);
    const changed = () =>
      errorLines(readFileSync(join(copy.root, "clients/c-044/2026-06-08-retest/results.yaml"), "utf8"));
    expect(changed().join("\n")).toMatch(/3 pairs, 3 days apart, fewer than ten pairs/);

    const last = files[2] as string;
    writeFileSync(last, readFileSync(last, "utf8").replace(/systolic_mmhg: \d+/g, "systolic_mmhg: 151"));
    const before = changed();
    // No results of the changed visit are built: its numbers come from the session file.
    expect(copy.run("build", "--no-report", "clients/c-044").out).toMatch(/2 of 2 visits built/);
    expect(changed()).not.toEqual(before);
    const text = changed();
    expect(copy.run("build", "--no-report", "--no-cache", "clients/c-044").code).toBe(0);
    expect(changed()).toEqual(text);
  });

  it("go along in an archive as numbers, so that it can be computed again without the other clients", () => {
    const copy = practice();
    for (const [i, mass] of [88.6, 89.4, 88.8].entries()) repeatedClient(copy, `c-90${i}`, mass);
    expect(copy.run("build", "--no-report").code).toBe(0);
    expect(copy.run("archive", "c-044").code).toBe(0);
    const { code, out } = copy.run("verify", "c-044-2026-06-08.zip");
    expect(out).toMatch(/2 of 2 visits agree/);
    expect(code).toBe(0);
    expect(readFileSync(join(copy.root, "c-044-2026-06-08.zip")).includes("c-900")).toBe(false);
  });

  it("are pointed out when their label hides them", () => {
    const copy = practice();
    const session = join(copy.root, "clients/c-044/2026-06-08-retest/session.yaml");
    writeFileSync(session, readFileSync(session, "utf8").replace(/^purpose: .*$/m, "purpose: reliability"));
    const { code, err } = copy.run("check");
    expect(code).toBe(0);
    expect(err).toMatch(/warning folder-name.*session\.yaml/);
    expect(err).toMatch(/a label that holds the word reliability/);
  });

  it("costs nothing and changes nothing where there are none", () => {
    const copy = practice();
    expect(copy.run("build", "--no-report").code).toBe(0);
    expect(JSON.parse(copy.run("retests", "--json").out).every((set: { file?: string }) => set.file)).toBe(true);
  });
});
