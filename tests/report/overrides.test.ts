import { describe, expect, it } from "vitest";
import { OverrideFault } from "../../src/report/override-fault.js";
import { cssFault, htmlFault } from "../../src/report/override-text.js";
import { type Overrides, withOverrides, withWords } from "../../src/report/overrides.js";
import { openReporter } from "../../src/report/render.js";
import { assets, inputOf } from "./assets.js";

const partial = (name: string, text: string): Overrides => ({
  partials: [{ path: `report/partials/${name}.hbs`, text }],
});
const faultOf = (run: () => unknown): OverrideFault => {
  try {
    run();
  } catch (error) {
    if (error instanceof OverrideFault) return error;
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("a practice's own partial", () => {
  it("takes the place of ours", async () => {
    const own = partial(
      "cautions",
      '<section id="{{id}}"><h2>{{title}}</h2>{{#each cautions}}<p>» {{this}}</p>{{/each}}</section>',
    );
    const html = await openReporter(withOverrides(assets, own)).renderReport(inputOf("client"));
    expect(html).toContain("<p>» This report describes measurements.");
    expect(html).not.toContain("<li>This report describes measurements.");
  });

  it.each([
    ["nothing", "<p>x</p>", undefined, /no partial nothing/],
    ["page", "<p>x</p>", undefined, /not replaced/],
    ["note", "<p>\n{{note.text}\n</p>", 2, /no template/],
    ["note", "<p>\n\n{{lookup note 'text'}}</p>", 3, /calls a helper/],
    ["note", "<p>\n{{#with note}}{{text}}{{/with}}</p>", 2, /with/],
    ["note", "<p>\n{{{note.text}}}</p>", 2, /unescaped/],
    ["note", "<p>{{note.text}}</p>\n<script>alert(1)</script>", 2, /script/],
    ["note", "<p>\n<img src='https://example.org/x.png'>{{note.text}}</p>", 2, /fetched/],
    ["note", '<p>\n<img src="../../client.yaml">{{note.text}}</p>', 2, /fetched/],
    ["note", '<p\nonclick="x()">{{note.text}}</p>', 2, /run code/],
    ["note", '<p style="background:url(//example.org/a)">{{note.text}}</p>', 1, /fetched/],
    ["note", "{{#*inline 'x'}}a{{/inline}}", 1, /places text/],
  ] as const)("%s: %j is refused with its line", (name, text, line, reason) => {
    const fault = faultOf(() => withOverrides(assets, partial(name, text)));
    expect(fault.path).toBe(`report/partials/${name}.hbs`);
    expect(fault.line).toBe(line);
    expect(fault.message).toMatch(reason);
  });

  it("that asks for a value which is not there names itself and the line", async () => {
    const reporter = openReporter(
      withOverrides(assets, partial("cautions", "<section>\n<h2>{{heading}}</h2></section>")),
    );
    await expect(reporter.renderReport(inputOf("client"))).rejects.toMatchObject({ template: "cautions", line: 2 });
  });
});

describe("a practice's own words", () => {
  const words = inputOf("client").words;
  const file = (text: string) => ({ path: "report/words/en.yaml", text });

  it("are laid over ours, one by one", async () => {
    const own = withWords(
      words,
      file('client:\n  training: "What to do until we meet again"\nmeasures:\n  body_mass: Weight\n'),
    );
    const html = await openReporter(assets).renderReport({ ...inputOf("client"), words: own });
    expect(html).toContain("What to do until we meet again");
    expect(html).toContain("How sure we are");
    expect(withWords(words, file(""))).toEqual(words);
  });

  it.each([
    ["client:\n  trianing: x\n", 2, /no text client.trianing/],
    ['client:\n  varies: "by {much}"\n', 2, /\{much\}/],
    ["client:\n  training: {a: b}\n", 2, /no text/],
    ["client:\n  training: [\n", 3, /report.words.en.yaml/],
    ["client: training\n", undefined, /no group/],
  ] as const)("%j is refused with its line", (text, line, reason) => {
    const fault = faultOf(() => withWords(words, file(text)));
    expect(fault.message).toMatch(reason);
    if (line !== undefined) expect(Math.abs((fault.line ?? 0) - line)).toBeLessThanOrEqual(1);
  });
});

describe("a practice's own style", () => {
  it("stands after ours", async () => {
    const theme = { path: "report/theme.css", text: "h1 { letter-spacing: 0.02em; }" };
    const html = await openReporter(withOverrides(assets, { partials: [], theme })).renderReport(inputOf("client"));
    expect(html.indexOf("letter-spacing: 0.02em")).toBeGreaterThan(html.indexOf("@page { margin"));
  });

  it.each([
    ['a{}\n@import "x.css";', 2],
    ["a{background:url(https://example.org/x)}", 1],
    ["a{\nbackground:\\75rl(x.png)}", 2],
    ["a{}\n\n</style><script>", 3],
    ["a{background:image-set('x.png' 1x)}", 1],
    ["a{color:red}\n}", 2],
    ["a{color:red}\nb{", 2],
    ["/* url( */\na{background:url('file:///etc/passwd')}", 2],
  ])("%j is refused with its line", (text, line) => {
    expect(cssFault(text)?.line).toBe(line);
    expect(() => withOverrides(assets, { partials: [], theme: { path: "report/theme.css", text } })).toThrow(
      `theme.css:${line}`,
    );
  });

  it("may hold pictures of its own and comments", () => {
    expect(cssFault("/* { url( */ a{background:url(data:image/png;base64,AAAA)}")).toBeUndefined();
    expect(
      htmlFault('<p class="x"><a href="#methods">m</a><img src="data:image/png;base64,AA" alt=""></p>'),
    ).toBeUndefined();
  });
});
