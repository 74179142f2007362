/** The pages of the practice and of each client, as a build writes them. */
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { type Copy, copyPractice } from "./practice-copy.js";

const copies: Copy[] = [];
const practice = (...only: string[]) => {
  const copy = copyPractice(only);
  copies.push(copy);
  return copy;
};
afterAll(() => {
  for (const copy of copies) copy.remove();
});
const page = (copy: Copy, path = "index.html") => readFileSync(join(copy.root, path), "utf8");
/** A page without its style, so that a failing check prints what a reader sees. */
const body = (copy: Copy, path?: string) => page(copy, path).replace(/<style>[\s\S]*<\/style>/, "");
const CLIENT = "clients/c-044/index.html";

describe("the pages of practice and clients", () => {
  const both = practice("c-044", "c-031");
  const first = both.run("build", "--no-pdf", "--edition", "practitioner");

  it("stand alone: no scripts, no outside requests, every link leads to a file or an anchor", () => {
    const copy = both;
    expect(first.code).toBe(0);
    expect(first.out).toMatch(/^index\.html and 2 more pages written$/m);
    for (const path of ["index.html", CLIENT, "clients/c-031/index.html"]) {
      const html = body(copy, path);
      expect(html).not.toMatch(/<script|https?:\/\//);
      expect(html).not.toMatch(/undefined|NaN|\[object/);
      for (const [, href = ""] of html.matchAll(/href="([^"]+)"/g)) {
        if (href.startsWith("#")) expect(html, `${path} ${href}`).toContain(`id="${href.slice(1)}"`);
        else expect(existsSync(join(copy.root, path, "..", href)), `${path} ${href}`).toBe(true);
      }
    }
  });

  it("say what is open, who is due and what was not measured again", () => {
    const html = body(both);
    // c-031's last test failed its gas calibration; c-044's pressure stood at a published limit.
    expect(html).toMatch(
      /c-031<\/a><\/th><td class="day">1 Jun 2026<\/td><td>Values withheld<\/td><td>\d+ values, because of: [^<]*gas/,
    );
    expect(html).toMatch(/c-044<\/a>.*Outside a published limit<\/td><td>Resting blood pressure: 140\/84 mmHg/);
    // By hand: 8 June 2026 plus 56 and 84 days is 3 and 31 August.
    expect(html).toMatch(/August 2026<\/caption>/);
    expect(html).toMatch(/3 August 2026 to 31 August 2026<\/td><td>common practice, 8 to 12 weeks/);
    expect(html).toMatch(/c-044<\/a><\/th><td class="day">8 Jun 2026<\/td><td>Body size, Mobility and balance/);
  });

  it("show the course of primary outcomes with their error, and say it in words", () => {
    const html = body(both, CLIENT);
    expect(html).toMatch(/<svg/);
    expect(html).toMatch(/aria-label="30 Mar 2026: 39.0.kg and 8 Jun 2026: 41.0.kg/);
    expect(html.replace(/ (?:data-head|class)="[^"]*"/g, "")).toMatch(
      /Grip strength, better hand<\/th><td>39.0.kg<\/td><td>41.0.kg<\/td><td>\+2.0.kg<\/td><td>no clear change/,
    );
  });

  it("are left alone when nothing changed, and come out the same without what was kept", () => {
    const copy = both;
    const before = [page(copy), page(copy, CLIENT)];
    const written = statSync(join(copy.root, "index.html")).mtimeMs;
    expect(copy.run("build", "--no-pdf", "--edition", "practitioner").out).toBe("0 of 4 visits built, 4 unchanged.\n");
    expect(statSync(join(copy.root, "index.html")).mtimeMs).toBe(written);
    rmSync(join(copy.root, ".waymark"), { recursive: true });
    rmSync(join(copy.root, CLIENT));
    // Only one client is built: the other's page comes from its results.
    expect(copy.run("build", "--no-pdf", "--edition", "practitioner", "clients/c-031").code).toBe(0);
    expect([page(copy), page(copy, CLIENT)]).toEqual(before);
    expect(copy.run("build", "--no-pdf", "--no-cache", "--edition", "practitioner").code).toBe(0);
    expect([page(copy), page(copy, CLIENT)]).toEqual(before);
  });

  it("follow an edit, a new client and one that left", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-pdf", "--edition", "practitioner");
    const file = join(copy.root, "clients/c-044/client.yaml");
    writeFileSync(file, readFileSync(file, "utf8").replace("eight days", "nine days"));
    copy.run("build", "--no-pdf", "--edition", "practitioner");
    expect(body(copy)).toContain("nine days");
    expect(body(copy, CLIENT)).toContain("nine days");
    const other = join(copy.root, "clients/c-045");
    cpSync(join(copy.root, "clients/c-044"), other, { recursive: true });
    for (const name of [
      "client.yaml",
      ...readdirSync(other)
        .filter((f) => /^2026/.test(f))
        .map((f) => `${f}/session.yaml`),
    ])
      writeFileSync(join(other, name), readFileSync(join(other, name), "utf8").replaceAll("c-044", "c-045"));
    copy.run("build", "--no-pdf", "--edition", "practitioner");
    expect(body(copy)).toMatch(/2 clients, 4 visits/);
    rmSync(other, { recursive: true });
    copy.run("build", "--no-pdf", "--edition", "practitioner");
    expect(body(copy)).toMatch(/1 clients?, 2 visits/);
  });

  it("wear the practice's own partials, words and style, and answer a broken one with its file", () => {
    const copy = practice("c-044");
    const put = (name: string, text: string) => {
      mkdirSync(join(copy.root, "report", name, ".."), { recursive: true });
      writeFileSync(join(copy.root, "report", name), text);
    };
    const build = () => copy.run("build", "--no-pdf", "--edition", "practitioner");
    expect(build().code).toBe(0);
    put("words/en.yaml", "overview:\n  practice: Our people\nmeasures:\n  grip_strength: Squeeze\n");
    put("partials/head.hbs", "<header class='ours'><h1>» {{head.title}}</h1></header>");
    put("theme.css", "h1 { letter-spacing: 0.033em; }");
    const pages = ["index.html", CLIENT];
    const end = build();
    expect(end).toMatchObject({ code: 0, err: "" });
    expect(end.out).toMatch(/index\.html and 1 more pages written/);
    expect(body(copy)).toContain("<h1>» Our people</h1>");
    expect(body(copy, CLIENT)).toMatch(/<h1>» [^<]+<\/h1>/);
    expect(body(copy, CLIENT)).toContain("Squeeze");
    for (const path of pages) {
      const style = /<style>([\s\S]*)<\/style>/.exec(page(copy, path))?.[1] ?? "";
      expect(style.trimEnd().endsWith("h1 { letter-spacing: 0.033em; }"), path).toBe(true);
    }
    const before = pages.map((path) => page(copy, path));
    put("words/en.yaml", "overview:\n  practise: Our people\n");
    const broken = build();
    expect(broken.code).toBe(1);
    expect(broken.err).toMatch(/report\/words\/en\.yaml:2/);
    expect(pages.map((path) => page(copy, path))).toEqual(before);
    for (const part of ["words/en.yaml", "partials/head.hbs", "theme.css"]) rmSync(join(copy.root, "report", part));
    expect(build().code).toBe(0);
    expect(page(copy)).not.toMatch(/»|0\.033em|Our people/);
  });

  it("follow the laboratory's picture", () => {
    const copy = practice("c-044");
    const lab = join(copy.root, "lab.yaml");
    const logo = join(copy.root, "mark.svg");
    writeFileSync(logo, '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><path d="M0 0h1"/></svg>');
    writeFileSync(lab, `${readFileSync(lab, "utf8")}logo: mark.svg\n`);
    const build = () => copy.run("build", "--no-pdf", "--edition", "referral").out;
    expect(build()).toMatch(/2 of 2 visits built/);
    expect(build()).toMatch(/0 of 2 visits built/);
    writeFileSync(logo, '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"><path d="M0 0v1"/></svg>');
    expect(build()).toMatch(/2 of 2 visits built/);
  });

  it("are not written when they are not wanted", () => {
    const copy = practice("c-044");
    copy.run("build", "--no-pdf", "--edition", "practitioner", "--no-index");
    expect(existsSync(join(copy.root, "index.html"))).toBe(false);
    copy.run("build", "--no-report");
    expect(existsSync(join(copy.root, "index.html"))).toBe(false);
  });
});
