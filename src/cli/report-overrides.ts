/** A practice's own partials, words and style, under report/ in its folder. */
import { OverrideFault, type OverrideFile, type Overrides } from "../report/overrides.js";
import { TemplateError } from "../report/templates.js";
import { type FileBytes, Unreadable } from "./files.js";
import { filesIn, type Practice, readIfThere } from "./practice.js";

const FOLDER = "report";
const asText = ({ path, bytes }: FileBytes): OverrideFile => ({ path, text: new TextDecoder().decode(bytes) });

export function overridesOf(practice: Practice, language: string): Overrides {
  const words = readIfThere(practice, `${FOLDER}/words/${language}.yaml`);
  const theme = readIfThere(practice, `${FOLDER}/theme.css`);
  return {
    partials: filesIn(practice, `${FOLDER}/partials`, /\.hbs$/).map(asText),
    ...(words === undefined ? {} : { words: asText(words) }),
    ...(theme === undefined ? {} : { theme: asText(theme) }),
  };
}

/** Every file of a practice that changes how its reports look: a change of one makes them stale. */
export const overrideFiles = (practice: Practice): readonly FileBytes[] => {
  const theme = readIfThere(practice, `${FOLDER}/theme.css`);
  return [
    ...filesIn(practice, `${FOLDER}/partials`, /\.hbs$/),
    ...filesIn(practice, `${FOLDER}/words`, /\.yaml$/),
    ...(theme === undefined ? [] : [theme]),
  ];
};

/** A fault of the practice's own files as a problem of its input; everything else as it came. */
export function asProblem(error: unknown, practice: Practice): unknown {
  if (error instanceof OverrideFault)
    return new Unreadable(placed(error.path, error.line), error.found, error.fix || "Remove the file.");
  if (!(error instanceof TemplateError)) return error;
  const path = `${FOLDER}/partials/${error.template}.hbs`;
  if (readIfThere(practice, path) === undefined) return error;
  return new Unreadable(
    placed(path, error.line),
    error.reason,
    "See our partial of that name for the values it is given.",
  );
}

const placed = (path: string, line: number | undefined): string => (line === undefined ? path : `${path}:${line}`);
