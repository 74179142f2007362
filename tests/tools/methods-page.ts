/**
 * Writes src/METHODS.md from the metadata of formulas, reference tables, published errors, rules and diagnostics: the one
 * place where a reader sees everything the program can say and where each number comes from. `npm run docs`.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";
import { formulas } from "../../src/formulas.generated.js";
import type { AnyFormula, Source } from "../../src/kernel/formula.js";
import type { ReferenceTable } from "../../src/kernel/generated/reference-table.js";
import type { TypicalErrorTable } from "../../src/kernel/generated/typical-error.js";
import type { Rule } from "../../src/kernel/rule.js";
import { listTables } from "../../src/norms/list-tables.js";
import { rules } from "../../src/rules.generated.js";
import { codes } from "../../src/validate/codes.js";

const PAGE = "src/METHODS.md";

const tablesIn = <T>(folder: string): T[] =>
  readdirSync(folder)
    .filter((file) => file.endsWith(".yaml"))
    .sort()
    .map((file) => parse(readFileSync(join(folder, file), "utf8")) as T);

const cell = (text: string) => text.replaceAll("|", "\\|").replaceAll("\n", " ");
const row = (...cells: string[]) => `| ${cells.map(cell).join(" | ")} |`;

const provenance = (verified: string): string =>
  ({
    seen: "",
    memory: " From memory, to be checked against the source.",
    "common practice": " Common practice, no source.",
    own: " A rule of this program.",
  })[verified] ?? "";

const cite = (source: Source | TypicalErrorTable["source"] | ReferenceTable["source"], verified: string): string => {
  const { authors, year, title, journal, doi, where } = source as Source;
  const parts = [`${authors}${year === null ? "" : ` (${year})`}. ${title}`, journal, doi && `doi:${doi}`, where];
  return `${parts.filter(Boolean).join(". ")}.${provenance(verified)}`.replaceAll("..", ".");
};

function formulaBlock(formula: AnyFormula): string {
  const inputs = Object.entries(formula.inputs).map(
    ([name, { unit, range }]) => `${name}${unit ? ` (${unit})` : ""}${range ? `: ${range}` : ""}`,
  );
  return [
    `### ${formula.id} r${formula.revision}`,
    "",
    `${formula.title}.`,
    "",
    `    ${formula.equation.replaceAll("\n", "\n    ")}`,
    "",
    `- Inputs: ${inputs.join("; ") || "none"}`,
    `- Gives: ${formula.output.unit || "a number without unit"}, ${formula.output.decimals} decimals${formula.see === undefined ? "" : `; standard error of estimate ${formula.see}`}`,
    ...(formula.caveat ? [`- Limits: ${formula.caveat}`] : []),
    `- Source: ${cite(formula.source, formula.source.verified)}`,
    `- Checked: ${formula.checks.map((check) => `${check.expect === "refused" ? "refused" : check.expect} (${check.from})`).join("; ")}`,
  ].join("\n");
}

const ruleBlock = (rule: Rule): string =>
  [
    `### ${rule.id} r${rule.revision}`,
    "",
    `${rule.title}. Section: ${rule.section.replaceAll("_", " ")}.`,
    "",
    `- Source: ${cite(rule.source, rule.source.verified)}`,
  ].join("\n");

const errorBlock = (table: TypicalErrorTable): string =>
  [
    `### ${table.id}`,
    "",
    `${table.population}${table.n === undefined ? "" : `, n ${table.n}`}${table.days_between === undefined ? "" : `, days between tests ${table.days_between}`}.`,
    "",
    "| measures | error | n − 1 |",
    "|---|---|---|",
    ...table.rows.map((r) =>
      row(
        r.measures.join(", "),
        `${"value" in r ? (r as { value: unknown }).value : ""} ${(r as { unit?: string }).unit ?? ""} (${r.statistic})`,
        String(r.df ?? ""),
      ),
    ),
    "",
    `- Source: ${cite(table.source, table.verified)}`,
  ].join("\n");

function tableBlock(table: ReferenceTable): string {
  const [listing] = listTables([table]);
  return [
    `### ${table.id}`,
    "",
    `${table.title}. Of ${table.measure} (${table.unit}), for ${listing?.covers}.`,
    "",
    `- People: ${listing?.population || "not stated"}`,
    ...(listing?.choice ? [`- Used with: ${listing.choice}`] : []),
    `- Source: ${cite(table.source, table.verified)}`,
    `- Checked: ${table.checks.map((check) => check.from).join("; ")}`,
    ...(table.notes ? [`- Notes: ${table.notes.trim()}`] : []),
  ].join("\n");
}

interface Coverage {
  readonly tests_each: number;
  readonly columns: readonly string[];
  readonly vt1: readonly (readonly (string | number | null)[])[];
  readonly vt2: readonly (readonly (string | number | null)[])[];
}

function coverageBlock(): string {
  const study = parse(readFileSync("src/derive/thresholds/coverage.yaml", "utf8")) as Coverage;
  const head = [
    "scenario",
    "tests",
    "given, %",
    "bias, L/min",
    "SD, L/min",
    "half width, L/min",
    "truth held, %",
    "invented, %",
  ];
  const lines = (list: Coverage["vt1"]) => [
    row(...head),
    `|${head.map(() => "---|").join("")}`,
    ...list.map((r) => row(...r.map((c) => (c === null ? "" : String(c))))),
  ];
  return [
    "## How well the thresholds are found",
    "",
    `Seeded tests with known truth, ${study.tests_each} a scenario, run through reading, cleaning and fitting (\`npm run study:thresholds\`). “Truth held” is the share of nominal 95 % intervals that contain the true threshold; “invented” is the share of tests without one in which one was given.`,
    "",
    "**First ventilatory threshold**",
    "",
    ...lines(study.vt1),
    "",
    "**Second ventilatory threshold**",
    "",
    ...lines(study.vt2),
  ].join("\n");
}

export function methodsPage(): string {
  return `${[
    "<!-- Made by npm run docs from the metadata of the modules. Do not edit. -->",
    "# Methods",
    "",
    "Every formula, reference table, published error, validity rule and message of Waymark, with equation, units, range, source and worked checks. “From memory” means recalled with high confidence and still to be checked against the source; reports say so wherever such a number is used.",
    "",
    `[Formulas](#formulas) (${formulas.length}) · [Reference tables](#reference-tables) · [Published errors](#published-errors) · [Validity rules](#validity-rules) (${rules.length}) · [Thresholds](#how-well-the-thresholds-are-found) · [Messages](#messages) (${Object.keys(codes).length})`,
    "",
    "## Formulas",
    "",
    formulas.map(formulaBlock).join("\n\n"),
    "",
    "## Reference tables",
    "",
    "Percentiles are interpolated linearly between printed ones; below the lowest or above the highest printed one the report says so and gives no number.",
    "",
    tablesIn<ReferenceTable>("src/norms/tables").map(tableBlock).join("\n\n"),
    "",
    "## Published errors",
    "",
    "Used only where the laboratory has no retests of its own.",
    "",
    tablesIn<TypicalErrorTable>("src/compare/tables").map(errorBlock).join("\n\n"),
    "",
    "## Validity rules",
    "",
    rules.map(ruleBlock).join("\n\n"),
    "",
    coverageBlock(),
    "",
    "## Messages",
    "",
    "| code | meaning |",
    "|---|---|",
    ...Object.entries(codes).map(([code, meaning]) => row(`\`${code}\``, meaning)),
  ].join("\n")}\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, methodsPage());
