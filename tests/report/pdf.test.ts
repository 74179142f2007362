/** PDF as Chromium prints it, read back with a PDF library: our fonts alone, tagged, titled, dated by the visit. */
import { PDFDict, PDFDocument, PDFName } from "pdf-lib";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findBrowser } from "../../src/report/browser.js";
import { COMMON } from "../../src/report/characters.js";
import type { PdfFacts } from "../../src/report/pdf.js";
import { openPrinter, type Printer } from "../../src/report/printer.js";
import { openReporter } from "../../src/report/render.js";
import { assets, DIGEST, EDITIONS, inputOf } from "./assets.js";
import { baseline, retest } from "./fixture.js";

interface Outline {
  readonly items: readonly Outline[];
}
const found = await findBrowser().catch(() => undefined);
const facts: PdfFacts = {
  title: "Laboratory report · c-017",
  client: "c-017",
  visit: retest.date,
  digest: DIGEST,
  language: "en",
  laboratory: "Harbour Street",
};

describe.skipIf(found === undefined)("PDF (skipped where no Chromium is to be had)", () => {
  const reporter = openReporter(assets);
  let printer: Printer;
  beforeAll(() => {
    printer = openPrinter({ pages: 1 });
  });
  afterAll(() => printer.close());

  const fontsOf = async (bytes: Uint8Array): Promise<string[]> => {
    const document = await PDFDocument.load(bytes, { updateMetadata: false });
    return document.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) => (object instanceof PDFDict ? [object] : []))
      .filter((dict) => dict.get(PDFName.of("Type"))?.toString() === "/FontDescriptor")
      .map((dict) => dict.get(PDFName.of("FontName"))?.toString() ?? "");
  };

  /** What names a picture is shown on the screen before it is printed. */
  const shown = (html: string): string => html.replace("<head>", "<head><!-- data:image -->");
  const onFreshPages = async (pages: readonly string[]): Promise<Uint8Array[]> => {
    const fresh = openPrinter({ pages: 1, refills: 1 });
    const printed: Uint8Array[] = [];
    for (const html of pages) printed.push(await fresh.print(html, facts));
    await fresh.close();
    return printed;
  };

  it.each(EDITIONS)(
    "of the %s edition holds only the project's fonts, tags, title, language, outline and facts",
    async (edition) => {
      const bytes = await printer.print(await reporter.renderReport(inputOf(edition)), facts);
      expect(bytes.length).toBeLessThan(900_000);
      const fonts = await fontsOf(bytes);
      expect(fonts.length).toBeGreaterThan(2);
      for (const font of fonts) expect(font).toMatch(/^\/[A-Z]{6}\+Waymark(?:Serif|Sans)-/);

      const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
      const { info } = (await pdf.getMetadata()) as unknown as {
        info: Record<string, unknown> & { Custom?: Record<string, string> };
      };
      expect(info.Title).toBe(facts.title);
      expect(info.CreationDate).toBe("D:20260518000000+00'00'");
      expect(info.Custom).toMatchObject({ WaymarkClient: "c-017", WaymarkVisit: "2026-05-18", WaymarkResults: DIGEST });
      expect((await pdf.getMarkInfo())?.Marked).toBe(true);
      const headings = (items: readonly Outline[]): number => items.reduce((n, one) => n + 1 + headings(one.items), 0);
      expect(headings((await pdf.getOutline()) ?? [])).toBeGreaterThan(3);
      if (edition === "referral") expect(pdf.numPages).toBe(1);
      if (edition === "client") expect(pdf.numPages).toBeLessThanOrEqual(4);
      for (let n = 1; n <= pdf.numPages; n++) {
        const page = await pdf.getPage(n);
        const words = (await page.getTextContent()).items.map((item) => ("str" in item ? item.str : "")).join(" ");
        expect(words, `page ${n}`).toContain(`${n} of ${pdf.numPages}`);
        expect(words, `page ${n}`).toContain("c-017 · 18 May 2026");
        expect(words, `page ${n}`).not.toMatch(/\uFFFD|\u25A1/);
      }
      const root = (await PDFDocument.load(bytes, { updateMetadata: false })).catalog;
      expect(root.get(PDFName.of("Lang"))?.toString()).toBe("(en)");
      expect(root.get(PDFName.of("Metadata"))).toBeDefined();
    },
  );
  it("figures keep their alternative text", async () => {
    const bytes = await printer.print(await reporter.renderReport(inputOf("practitioner")), facts);
    const pdf = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
    const alts: string[] = [];
    const walk = (node: { alt?: string; children?: unknown[] }): void => {
      if (node.alt) alts.push(node.alt);
      for (const child of node.children ?? []) walk(child as { alt?: string });
    };
    for (let n = 1; n <= pdf.numPages; n++)
      walk(((await (await pdf.getPage(n)).getStructTree()) ?? {}) as { alt?: string });
    expect(alts.some((alt) => alt.includes("2.72\u00a0L/min"))).toBe(true);
  });
  it("is the same bytes on a kept page after another report, on a fresh page and in a second browser", async () => {
    const html = await reporter.renderReport(inputOf("client"));
    const other = await reporter.renderReport(inputOf("practitioner", "en", baseline, []));
    const first = await printer.print(html, facts);
    await printer.print(other, facts);
    const kept = await printer.print(html, facts);
    const fresh = openPrinter({ pages: 1, refills: 1 });
    const second = await fresh.print(html, facts);
    const third = await fresh.print(html, facts);
    await fresh.close();
    for (const again of [kept, second, third]) expect(Buffer.compare(again, first)).toBe(0);
  });
  it.each(EDITIONS)(
    "of the %s edition is the same bytes whether it is laid out for a screen first",
    async (edition) => {
      const html = await reporter.renderReport(inputOf(edition));
      const [unseen, seen] = await onFreshPages([html, shown(html)]);
      expect(Buffer.compare(unseen as Uint8Array, seen as Uint8Array)).toBe(0);
    },
  );
  it("shows a picture and a face of the practice's own style", async () => {
    const html = await reporter.renderReport(inputOf("referral"));
    const dot = "data:image/svg+xml,%3Csvg xmlns='http://www.w3.org/2000/svg'%3E%3Ccircle r='9'/%3E%3C/svg%3E";
    const face = Buffer.from(assets.fonts["serif-bold"] as Uint8Array).toString("base64");
    const styled = (css: string): string => html.replace("</style>", `${css}</style>`);
    const faced = styled(`@font-face{font-family:Own;src:url(data:font/woff2;base64,${face})}h1{font-family:Own}`);
    const pages = [html, faced, shown(faced), styled(`main{background:url("${dot}")}`)];
    const [plain, own, ownSeen, pictured] = (await onFreshPages(pages)) as [Buffer, Buffer, Buffer, Buffer];
    expect(Buffer.compare(own, ownSeen)).toBe(0);
    expect(Buffer.compare(own, plain)).not.toBe(0);
    expect(pictured.length).toBeGreaterThan(plain.length);
  });
  it.each([
    ["common", COMMON, assets],
    ["whole", Object.keys(assets.theme.widths["sans-regular"] ?? {}).join(""), { ...assets, ownCss: " " }],
  ])("holds a glyph for every character the %s fonts claim, and asks no other font", async (_, claimed, dress) => {
    const characters = [...claimed].filter((c) => c.trim() !== "" && !/[\u00ad\u200b]/.test(c));
    const lines = characters
      .map((c) =>
        `<p>V${/\p{M}/u.test(c) ? c : ` ${c}`}</p>`.replace(/ ([<&])/, (_, s) => (s === "<" ? " &lt;" : " &amp;")),
      )
      .join("");
    const page = await openReporter(dress).renderReport(inputOf("referral"));
    const html = page.replace(
      /<main>[\s\S]*<\/main>/,
      `<main>${lines}<h2>${lines.replaceAll(/<.?p>/g, "")}</h2></main>`,
    );
    for (const font of await fontsOf(await printer.print(html, facts))) expect(font).toMatch(/\+Waymark/);
  });
  it("asks nothing of the network", async () => {
    const html = await reporter.renderReport(inputOf("referral"));
    const asking = html.replace(
      "<main>",
      '<main><img src="http://127.0.0.1:9/x.png" alt="x"><img src="file:///etc/hostname" alt="y">',
    );
    const bytes = await printer.print(asking, facts);
    expect(bytes.length).toBeGreaterThan(10_000);
  });
});
