/**
 * Results to reports: loads templates, words, theme and fonts once, and renders the editions of a visit. Loaded only by
 * a build that renders, so that checking and computing never wait for charts.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { formulas } from "../formulas.generated.js";
import type { Results } from "../kernel/results.js";
import { speechOf, type WordTree } from "../kernel/speech.js";
import type { Visit } from "../kernel/visit.js";
import { present } from "../pipeline.js";
import type { Reference } from "../pipeline-parts.js";
import { withOverrides, withWords } from "../report/overrides.js";
import type { PdfFacts } from "../report/pdf.js";
import { type Edition, openReporter, type ReportAssets, type Reporter } from "../report/render.js";
import type { Compiled } from "../report/structures.js";
import type { CitedTable } from "../report/view/context.js";
import type { Press } from "./editions.js";
import { LARGEST_FILE, readFile, Unreadable } from "./files.js";
import { PROGRAM } from "./freshness.js";
import type { Practice } from "./practice.js";
import { programYaml } from "./program-yaml.js";
import { asProblem, overridesOf } from "./report-overrides.js";
import { sentencesOf } from "./sentences.js";

const TEMPLATES = join(PROGRAM, "templates");
/** Made by `npm run build`. */
const COMPILED = join(PROGRAM, "dist/structures.json");

/** With `remember`, figures are kept for the next rendering: for a report that is watched. */
export function openPress(practice: Practice, reference: Reference, remember = false): Press {
  const reporters = new Map<string, { readonly reporter: Reporter; readonly words: WordTree }>();
  const ready = (asked: string | undefined) => {
    const language = spoken(asked);
    const known = reporters.get(language) ?? opened(practice, language, remember);
    reporters.set(language, known);
    return known;
  };
  const tables: readonly CitedTable[] = [...(reference.tables as readonly CitedTable[]), ...citedErrors(reference)];
  return {
    prepare: (language) => void ready(language),
    async render(visit, results, earlier, digest, editions) {
      const language = visit.laboratory.language ?? "en";
      const { reporter, words } = ready(language);
      const manner = {
        reporter,
        words,
        speech: speechOf(words),
        formulas,
        rules: reference.rules,
        tables,
        logo: logoOf(practice, visit.laboratory.logo),
      };
      const pages = await present({ visit, results, earlier, digest }, manner, editions).catch((error: unknown) => {
        throw asProblem(error, practice);
      });
      return pages.map((html, i) => ({
        edition: editions[i] as Edition,
        html,
        facts: factsOf(html, visit, results, digest, language),
      }));
    },
  };
}

/** Templates and words of a language with the practice's own in their places. */
export function dressed(practice: Practice, asked: string | undefined): { assets: ReportAssets; words: WordTree } {
  const language = spoken(asked);
  const own = overridesOf(practice, language);
  return { assets: withOverrides(assets(), own), words: withWords(wordsOf(language), own.words) };
}

function opened(practice: Practice, language: string, remember: boolean) {
  try {
    const { assets: dress, words } = dressed(practice, language);
    return { reporter: openReporter({ ...dress, remember }), words };
  } catch (error) {
    throw asProblem(error, practice);
  }
}

/** The language asked for if there are words of it; a check answers any other. */
const spoken = (language: unknown): string =>
  typeof language === "string" &&
  /^[a-z]{2}$/.test(language) &&
  existsSync(join(TEMPLATES, "words", `${language}.yaml`))
    ? language
    : "en";

const words = new Map<string, WordTree>();
/** The wording of a language, read once. */
export function wordsOf(language: string): WordTree {
  const known = words.get(language);
  if (known !== undefined) return known;
  const read = wordsIn(join(TEMPLATES, "words"), language);
  words.set(language, read);
  return read;
}
export function wordsIn(folder: string, language: string): WordTree {
  const own = programYaml<WordTree>(join(folder, `${language}.yaml`));
  const sentences = sentencesOf(folder, language);
  return sentences === undefined ? own : { ...own, sentences };
}

const factsOf = (html: string, visit: Visit, results: Results, digest: string, language: string): PdfFacts => ({
  title: /<title>([^<]*)<\/title>/.exec(html)?.[1] ?? `${results.client} ${results.date}`,
  client: results.client,
  visit: results.date,
  digest,
  language,
  laboratory: visit.laboratory.name,
});

/** Published errors are cited like reference tables. */
const citedErrors = (reference: Reference): CitedTable[] =>
  reference.publishedErrors.map(
    (table) => ({ ...table, measure: table.rows.flatMap((row) => row.measures).join(" ") }) as unknown as CitedTable,
  );

/** What the templates folder holds. */
function assets(): ReportAssets {
  const text = (path: string) => readFileSync(join(TEMPLATES, path), "utf8");
  const named = (folder: string) =>
    Object.fromEntries(
      readdirSync(join(TEMPLATES, folder))
        .filter((file) => file.endsWith(".hbs"))
        .sort()
        .map((file) => [file.replace(/\.hbs$/, ""), text(join(folder, file))]),
    );
  const fonts = readdirSync(join(TEMPLATES, "theme/fonts"))
    .filter((file) => file.endsWith(".woff2"))
    .sort()
    .map(
      (file) =>
        [file.replace(/\.woff2$/, ""), new Uint8Array(readFileSync(join(TEMPLATES, "theme/fonts", file)))] as const,
    );
  return {
    templates: { pages: named("."), partials: named("partials") },
    theme: {
      config: JSON.parse(text("theme/vega-config.json")),
      widths: JSON.parse(text("theme/fonts/widths.json")),
      ...(existsSync(COMPILED) ? { compiled: JSON.parse(readFileSync(COMPILED, "utf8")) as Compiled } : {}),
    },
    css: text("theme/print.css"),
    pagesCss: text("theme/pages.css"),
    fonts: Object.fromEntries(fonts),
  };
}

/** The laboratory's picture as a data address; "" when it has none. */
function logoOf(practice: Practice, path: string | undefined): string {
  if (path === undefined) return "";
  const { bytes } = readFile(practice.root, path);
  if (bytes.length > Math.min(200_000, LARGEST_FILE))
    throw new Unreadable(path, "is larger than 200 kB", "Every report carries the logo: make it smaller.");
  const type = path.endsWith(".svg") ? "image/svg+xml" : "image/png";
  return `data:${type};base64,${Buffer.from(bytes).toString("base64")}`;
}
