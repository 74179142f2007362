/** The watched report in a real Chromium: it follows edits, keeps its place, and survives a broken file. */
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";
import { type Watched, watchPage } from "./watched-page.js";

const VISIT = "clients/c-044/2026-03-30-baseline";
let copy: Copy;
let watched: Watched;
let path = "";
let text = "";
let changes = 0;
const save = async (now: string) => {
  writeFileSync(path, now);
  await watched.painted(++changes);
};
/** The session with another weighing. */
const weighing = (value: string) => text.replace(/mass_kg: (\[[^\]]*\]|[\d.]+)/, `mass_kg: ${value}`);
/** In the page; as text, because the types of this project know no page, only Node. */
const inPage = <T>(script: string) => watched.page.evaluate(script) as Promise<T>;
const body = () => inPage<string>("document.body.textContent");
const panel = () =>
  inPage<string>(`(() => {
    const live = document.getElementById("live");
    return live && getComputedStyle(live).display !== "none" ? live.textContent : "";
  })()`);

beforeAll(async () => {
  copy = copyPractice(["c-044"]);
  path = join(copy.root, VISIT, "session.yaml");
  text = readFileSync(path, "utf8");
  watched = await watchPage(copy.root, VISIT);
}, 120_000);
afterAll(async () => {
  expect(await watched.close()).toBe(0);
  copy.remove();
});

describe("waymark watch", () => {
  it("shows the report, follows an edit without loading the page again, and writes nothing", async () => {
    await inPage("globalThis.untouched = true");
    expect(await body()).toContain("88.9");
    await save(weighing("91.7"));
    expect(await body()).toContain("91.7");
    expect(await inPage("globalThis.untouched")).toBe(true);
    expect(copy.run("diff").out + copy.run("check").out).not.toContain("91.7");
    expect(() => readFileSync(join(copy.root, VISIT, "results.yaml"))).toThrow();
  });

  it("follows an editor that saves by renaming", async () => {
    writeFileSync(`${path}~`, weighing("92.3"));
    renameSync(`${path}~`, path);
    await watched.painted(++changes);
    expect(await body()).toContain("92.3");
  });

  it("keeps what the reader looks at where it is, and folds that are open", async () => {
    const where = () =>
      inPage<{ id: string; top: number; y: number }>(`(() => {
        const seen = [...document.querySelectorAll("main [id]")].find((e) => e.getBoundingClientRect().top >= 0);
        return { id: seen.id, top: Math.round(seen.getBoundingClientRect().top), y: Math.round(scrollY) };
      })()`);
    await inPage(`(() => {
      for (const fold of document.querySelectorAll("details")) fold.open = true;
      scrollTo({ top: document.body.scrollHeight * 0.6, behavior: "instant" });
    })()`);
    const before = await where();
    expect(before.y).toBeGreaterThan(500);
    await save(weighing("93.1"));
    const after = await where();
    expect(after.id).toBe(before.id);
    expect(Math.abs(after.top - before.top)).toBeLessThanOrEqual(2);
    expect(await inPage(`[...document.querySelectorAll("details")].every((d) => d.open)`)).toBe(true);
  });

  it("keeps the last good report under a message while a file is broken, and recovers", async () => {
    await save(weighing("[93.1"));
    expect(await body()).toContain("93.1");
    expect(await panel()).toMatch(/1 error in 1 file\. The report above is the last one without errors\./);
    expect(await panel()).toMatch(/session\.yaml:\d+/);
    await save(weighing("9310"));
    expect(await panel()).toMatch(/unit-slip|impossible-value/);
    expect(await body()).toContain("93.1");
    await save(weighing("94.2"));
    expect(await panel()).not.toMatch(/error/);
    expect(await body()).toContain("94.2");
  });

  it("shows what stands in a file as text, never as a page", async () => {
    await save(text.replace("waymark: session 1", "<img src=x onerror=alert(1)>: session 1"));
    expect(await panel()).toContain("<img src=x onerror=alert(1)>");
    expect(await inPage(`document.querySelectorAll("#live img").length`)).toBe(0);
    await save(text);
  });

  it("follows the laboratory's file, and a visit that comes", async () => {
    const lab = join(copy.root, "lab.yaml");
    writeFileSync(lab, readFileSync(lab, "utf8").replace(/^name: .*$/m, "name: Renamed house"));
    await watched.painted(++changes);
    expect(await body()).toContain("Renamed house");
    mkdirSync(join(copy.root, "clients/c-044/2027-01-01-other"));
    await watched.painted(++changes);
  });

  it("follows the practice's own partials, words and style; one that is broken is told with file and line", async () => {
    const put = async (name: string, now: string) => {
      writeFileSync(join(copy.root, "report", name), now);
      await watched.painted(++changes);
    };
    for (const folder of ["report", "report/partials", "report/words"]) {
      mkdirSync(join(copy.root, folder));
      await watched.painted(++changes);
    }
    expect(await panel()).not.toMatch(/error/);
    await put("words/en.yaml", "report:\n  methods: How we work\n");
    expect(await body()).toContain("How we work");
    await put("partials/cautions.hbs", '<section id="{{id}}"><h2>{{title}}</h2>» ours</section>');
    expect(await body()).toContain("» ours");
    await put("theme.css", "h1 { letter-spacing: 7px; }");
    const spacing = () => inPage<string>(`getComputedStyle(document.querySelector("h1")).letterSpacing`);
    expect(await spacing()).toBe("7px");
    expect(await inPage("globalThis.untouched")).toBe(true);
    for (const [name, broken, says] of [
      [
        "partials/cautions.hbs",
        "<section>\n{{> cautions}}",
        /report\/partials\/cautions\.hbs:2: .*back to where it stands/,
      ],
      ["words/en.yaml", "report:\n  none: x\n", /report\/words\/en\.yaml:2: there is no text report\.none/],
      ["theme.css", "h1 { letter-spacing: 9px; }\n}", /report\/theme\.css:2: a } closes nothing/],
    ] as const) {
      const good = readFileSync(join(copy.root, "report", name), "utf8");
      await put(name, broken);
      expect(await panel()).toMatch(says);
      expect(await panel()).toMatch(/The report above is the last one without errors\./);
      expect(await body()).toContain("» ours");
      expect(await spacing()).toBe("7px");
      await put(name, good);
      expect(await panel()).not.toMatch(/report\//);
      expect(await body()).toContain("How we work");
    }
  });

  it("answers this machine only, reads only, and lets in no other script", async () => {
    const { port } = new URL(watched.address);
    const ask = (headers: Record<string, string>, method = "GET") =>
      new Promise<{ status: number | undefined; policy: string }>((done, fail) => {
        request({ host: "127.0.0.1", port, path: "/", method, headers }, (answer) => {
          answer.resume();
          done({ status: answer.statusCode, policy: String(answer.headers["content-security-policy"]) });
        })
          .on("error", fail)
          .end();
      });
    expect(await ask({ host: "laboratory.example" })).toMatchObject({ status: 403 });
    expect(await ask({ host: `127.0.0.1:${port}` }, "POST")).toMatchObject({ status: 405 });
    const good = await ask({ host: `127.0.0.1:${port}` });
    expect(good.status).toBe(200);
    expect(good.policy).toContain("default-src 'none'; script-src 'self'");
  });

  it("puts no script into a report that is built", () => {
    expect(copy.run("build", "--no-pdf", "--edition", "practitioner").code).toBe(0);
    expect(readFileSync(join(copy.root, VISIT, "report.html"), "utf8")).not.toMatch(/<script|live\.js/);
  });
});
