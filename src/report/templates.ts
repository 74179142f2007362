/**
 * Handlebars, compiled once per template text (the program's own when it is built): strict (an absent value throws),
 * partials see only what they are given, everything is escaped but drawings this program made. A template has no
 * helpers but each and if, so that an override of a practice places text and can do nothing else.
 */
import { createHash } from "node:crypto";
import Handlebars from "handlebars";
import { compiledTemplates } from "./compiled-templates.js";

export interface TemplateSet {
  /** report.hbs, report-client.html's client.hbs, referral.hbs by name without ending. */
  readonly pages: Readonly<Record<string, string>>;
  readonly partials: Readonly<Record<string, string>>;
}

export class TemplateError extends Error {
  constructor(
    readonly template: string,
    readonly line: number | undefined,
    readonly reason: string,
    /** The partials that called it, the nearest first. */
    readonly callers: readonly string[] = [],
  ) {
    super(`templates/${template}.hbs${line === undefined ? "" : `:${line}`}: ${reason}`);
    this.name = "TemplateError";
  }
}

const HELPERS = new Set(["each", "if"]);
/** How every template is compiled. */
export const OPTIONS = {
  strict: true,
  explicitPartialContext: true,
  knownHelpersOnly: true,
  knownHelpers: { each: true, if: true },
} as const;

export type Page = (view: object) => string;

/**
 * What a page may cost that has templates of a practice's own: every partial and every round of each costs STEP and the
 * signs it gives. Rounds in rounds could otherwise fill any memory. A long report costs 8 % of it, a page of 1 700
 * clients 40 %. The program's own templates end, and go uncounted.
 */
const MOST = 100_000_000;
const STEP = 1000;

export function compileTemplates(set: TemplateSet): Readonly<Record<string, Page>> {
  const engine = Handlebars.create();
  for (const name of Object.keys(engine.helpers)) if (!HELPERS.has(name)) engine.unregisterHelper(name);
  let spent = 0;
  const counted = (text: string): string => {
    spent += STEP + text.length;
    if (spent > MOST) throw new Error("it would write a page without end: rounds in rounds, or too many partials");
    return text;
  };
  const each = engine.helpers.each as Handlebars.HelperDelegate;
  if (![...Object.values(set.pages), ...Object.values(set.partials)].every(compiledBefore))
    engine.registerHelper("each", function (this: unknown, list: unknown, options: Handlebars.HelperOptions) {
      const round: Handlebars.TemplateDelegate = (context, given) => counted(options.fn(context, given));
      return each.call(this, list, { ...options, fn: round });
    });
  for (const [name, text] of Object.entries(set.partials))
    engine.registerPartial(name, named(name, opened(engine, name, text), counted));
  return Object.fromEntries(
    Object.entries(set.pages).map(([name, text]) => {
      const compiled = opened(engine, name, text);
      const page: Page = (view) => {
        spent = 0;
        try {
          return compiled(view, { allowProtoPropertiesByDefault: false, allowProtoMethodsByDefault: false });
        } catch (error) {
          throw templateError(name, error);
        }
      };
      return [name, page];
    }),
  );
}

function opened(engine: typeof Handlebars, name: string, text: string): Handlebars.TemplateDelegate {
  const compiled = compiledBefore(text);
  return compiled === undefined ? engine.compile(checked(name, text), OPTIONS) : engine.template(compiled);
}

const compiledBefore = (text: string): TemplateSpecification | undefined =>
  compiledTemplates[createHash("sha256").update(text).digest("hex")];

/** A partial whose faults name it, not the page that called it. */
function named(
  name: string,
  compiled: Handlebars.TemplateDelegate,
  counted: (text: string) => string,
): Handlebars.TemplateDelegate {
  return (context, options) => {
    try {
      return counted(compiled(context, options));
    } catch (error) {
      if (!(error instanceof TemplateError)) throw templateError(name, error);
      throw new TemplateError(error.template, error.line, error.reason, [...error.callers, name]);
    }
  };
}

/** Parses a template so that a fault names its file and line before anything is printed. */
function checked(name: string, text: string): string {
  try {
    Handlebars.parse(text);
  } catch (error) {
    throw templateError(name, error);
  }
  return text;
}

function templateError(name: string, error: unknown): TemplateError {
  if (error instanceof TemplateError) return error;
  const text = error instanceof Error ? error.message : String(error);
  const line = /line (\d+)/i.exec(text)?.[1] ?? (error as { lineNumber?: number }).lineNumber;
  return new TemplateError(name, line === undefined ? undefined : Number(line), text.split("\n").at(-1) ?? text);
}
