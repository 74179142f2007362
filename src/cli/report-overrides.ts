/** A practice's own partials, words and style, under report/ in its folder. */
import { OverrideFault, type OverrideFile } from "../report/override-fault.js";
import type { Overrides } from "../report/overrides.js";
import { TemplateError } from "../report/templates.js";
import { type FileBytes, Unreadable } from "./files.js";
import { OVERRIDES, ownPartials, ownTheme, ownWords } from "./override-files.js";
import { type Practice, readIfThere } from "./practice.js";

const asText = ({ path, bytes }: FileBytes): OverrideFile => ({ path, text: new TextDecoder().decode(bytes) });

export function overridesOf(practice: Practice, language: string): Overrides {
  const words = ownWords(practice).find(({ path }) => path === `${OVERRIDES}/words/${language}.yaml`);
  const theme = ownTheme(practice);
  return {
    partials: ownPartials(practice).map(asText),
    ...(words === undefined ? {} : { words: asText(words) }),
    ...(theme === undefined ? {} : { theme: asText(theme) }),
  };
}

/** A fault of the practice's own files as a problem of its input; everything else as it came. */
export function asProblem(error: unknown, practice: Practice): unknown {
  if (error instanceof OverrideFault)
    return new Unreadable(placed(error.path, error.line), error.found, error.fix || "Remove the file.");
  if (!(error instanceof TemplateError)) return error;
  // A partial of ours fails where one of the practice's gives it something else than it wants: the nearest of those says so.
  const chain = [error.template, ...error.callers];
  const at = chain.findIndex((name) => readIfThere(practice, pathOf(name)) !== undefined);
  const name = chain[at];
  if (name === undefined) return error;
  const inner = chain[at - 1];
  return new Unreadable(
    placed(pathOf(name), inner === undefined ? error.line : lineOfCall(practice, name, inner)),
    inner === undefined ? error.reason : `${error.reason} (in ${inner}, which it calls)`,
    `See our partial ${inner ?? name} for the values it is given.`,
  );
}

const pathOf = (partial: string): string => `${OVERRIDES}/partials/${partial}.hbs`;

function lineOfCall(practice: Practice, name: string, called: string): number | undefined {
  const text = new TextDecoder().decode(readIfThere(practice, pathOf(name))?.bytes);
  const line = text.split("\n").findIndex((one) => one.includes(`{{> ${called}`));
  return line < 0 ? undefined : line + 1;
}

const placed = (path: string, line: number | undefined): string => (line === undefined ? path : `${path}:${line}`);
