/** The files of a new practice. Wording for the people of a laboratory; every one may be edited at once. */
import { stringify } from "yaml";

export const SCHEMA_FOLDER = ".waymark-schema";

export const LAB = `# yaml-language-server: $schema=./${SCHEMA_FOLDER}/laboratory.schema.json
# The laboratory: what holds for every visit. Keys and their meaning: waymark guide laboratory
waymark: laboratory 1
name: Our laboratory
# address: Street and number, town        # printed at the head of reports
paper: A4                                 # or Letter
language: en                              # en, de, es, fr
# altitude_m: 190                         # of the site above sea level; a barometer reading is judged by it
# retention_years: 10                     # how long records are kept, by your local code

# Instruments by a short key of your own. Session files name them by this key.
# For one that writes a CSV: waymark import FILE.csv --as KEY writes the columns here for you.
# Keys: waymark guide instrument
instruments:
  scales: {kind: scales, measures: [scales]}
  stadiometer: {kind: stadiometer, measures: [stadiometer]}
  cuff: {kind: sphygmomanometer, measures: [sphygmomanometer]}

# Choices that change numbers. They are written into every results.yaml and locked between visits.
# All of them, with what they mean: waymark guide choices
choices:
  peak_window_s: 30                       # VO2peak is the best mean over this long
  # blood_pressure_scheme: esh-2023
  # lactate_definition: fixed-4

# Your own test-retest pairs make your own measurement error, which goes before a published one.
# retests:
#   - {measure: vo2_peak, file: retests/vo2-peak.csv, days_between: 7, from: who was tested and how}

# The physician who agreed to the limits at which this laboratory stops or refers a client (a role, not a name).
# screening_sign_off: {by_role: sports physician, date: 2026-01-01, review_by: 2027-01-01}
`;

export const README = `# Our practice

Everything this laboratory measures, one folder a client, one folder a visit.

    lab.yaml                              the laboratory, its instruments and choices
    clients/c-001/client.yaml             who the client is to the laboratory: a pseudonym, never a name
    clients/c-001/2026-03-02-baseline/
      session.yaml                        what was measured at this visit; you write it
      treadmill.csv                       files of instruments it names, unchanged
      results.yaml                        the laboratory notebook; the build writes it
      report.html                         the report; the build writes it
    norms/  retests/                      your own reference tables and test-retest pairs, if you have any

## A visit

    waymark new client                              a new folder with the next free pseudonym
    waymark new session c-001 --date 2026-03-02     a session file to fill in
    waymark new session c-001 --date 2026-05-11 --like last
                                                    the same protocol and instruments, no measured values
    waymark guide blood_pressure                    keys, units, ranges, how to measure
    waymark import treadmill.csv --as cart          teach lab.yaml how an instrument writes its files
    waymark check                                   what is wrong, with line and remedy; --fix mends clear slips
    waymark watch                                   the report beside the editor, anew at every save
    waymark build                                   results.yaml and reports
    waymark diff                                    what moved since the last commit, and why

Then look at the change and commit it: \`git add -A\`, \`git diff --staged\`, \`git commit\`. A correction is a commit with a
reason: "c-001: body mass 74.0 -> 72.0, misread scale".

## Names

Client ids are pseudonyms. The list that says who c-001 is, and how to reach them, is kept elsewhere and never here: what is once
committed stays in the history.

## Years later

    waymark archive c-001        one file with all that is needed to rebuild and check the record
    waymark verify FILE.zip      is it whole, and does it still give the same numbers?
    waymark retention            whose records are past the time set in lab.yaml (it deletes nothing)
`;

export const GIT_ATTRIBUTES = `# Text with one kind of line end everywhere; files of instruments stay exactly as the instrument wrote them.
* text=auto
*.yaml text eol=lf diff=yaml
*.md text eol=lf
clients/**/*.csv -text
clients/**/*.tsv -text
clients/**/*.txt -text
retests/*.csv -text
# Written by the build: shown as changed, not line by line.
*.html text eol=lf -diff linguist-generated
*.pdf binary
`;

export const GIT_IGNORE = `# The build's own notes: losing them costs time, never a number.
.waymark/
# A PDF is printed again from the committed results at any time.
*.pdf
# Left by an editor or an interrupted write.
*.part
*~
.*.swp
.DS_Store
Thumbs.db
node_modules/
# Who a client is must never be here.
contacts*
names*
`;

/** Git shows the nearest top-level key above a change: a measure of results.yaml, a block of session.yaml. */
export const YAML_HUNK = "^[A-Za-z_][A-Za-z0-9_]*:";

/** Runs in the shell that comes with Git, on every system. */
export const hook = (node: string, program: string): string => `#!/bin/sh
# Stops a commit while a file holds an error. Waymark wrote it; edit or delete it as you like.
# To commit all the same, once: git commit --no-verify
if command -v waymark >/dev/null 2>&1; then
  exec waymark check
elif [ -f ${quoted(program)} ]; then
  exec ${quoted(node)} ${quoted(program)} check
fi
echo "waymark is not where it was when this practice was made; the commit goes on unchecked." >&2
`;
const quoted = (text: string) => `'${text.replaceAll("'", "'\\\\''")}'`;

/** Editors that read YAML with the common language server: completion, ranges and descriptions as you type, offline. */
export const EDITOR = `${JSON.stringify(
  {
    "yaml.schemas": {
      [`./${SCHEMA_FOLDER}/laboratory.schema.json`]: ["lab.yaml"],
      [`./${SCHEMA_FOLDER}/client.schema.json`]: ["clients/*/client.yaml"],
      [`./${SCHEMA_FOLDER}/session.schema.json`]: ["clients/*/*/session.yaml"],
      [`./${SCHEMA_FOLDER}/results.schema.json`]: ["clients/*/*/results.yaml"],
      [`./${SCHEMA_FOLDER}/reference-table.schema.json`]: ["norms/*.yaml"],
    },
    "yaml.schemaStore.enable": false,
    "files.eol": "\n",
    "[yaml]": { "editor.insertSpaces": true, "editor.tabSize": 2, "editor.quickSuggestions": { strings: true } },
  },
  null,
  2,
)}\n`;

export interface NewClient {
  readonly id: string;
  readonly birthDate?: string;
  readonly sex?: string;
}

export const clientText = ({
  id,
  birthDate,
  sex,
}: NewClient): string => `# yaml-language-server: $schema=../../${SCHEMA_FOLDER}/client.schema.json
# Who the client is to the laboratory. No name and no contact data. Keys: waymark guide client
waymark: client 1
id: ${stringify(id, { defaultStringType: "QUOTE_DOUBLE" }).trimEnd()}
birth_date: ${birthDate ?? ""}${birthDate ? "" : "                # year-month-day"}
sex: ${sex ?? ""}${sex ? "" : "                       # female or male: the group whose reference values are used"}
# consent: {date: 2026-01-01, to: [testing, keeping the record]}
# goals:
#   - goal: what the client wants to be able to do
#     date: 2026-09-20
# primary_outcomes: [vo2_peak_per_mass]   # the few measures that decide, chosen before the first test
# medication: [none]
`;
