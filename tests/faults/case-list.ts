/** The list of fault and hostile cases with what came of each, written by the tests that ran them: tests/output/cases.md. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const FOLDER = "tests/output";

export interface CaseList {
  add(name: string, outcome: string): void;
  write(): void;
}

export function caseList(part: string): CaseList {
  const rows: string[] = [];
  const cell = (text: string) => text.replace(/\s+/g, " ").replaceAll("|", "\\|").trim().slice(0, 300);
  return {
    add: (name, outcome) => void rows.push(`| ${cell(name)} | ${cell(outcome)} |`),
    write() {
      mkdirSync(join(FOLDER, "cases"), { recursive: true });
      writeFileSync(
        join(FOLDER, "cases", `${part}.md`),
        `## ${part}: ${rows.length} cases\n\n| case | outcome |\n|---|---|\n${rows.join("\n")}\n`,
      );
      const parts = readdirSync(join(FOLDER, "cases")).sort();
      writeFileSync(
        join(FOLDER, "cases.md"),
        `# Faults and hostile input, with outcome\n\n${parts.map((name) => readFileSync(join(FOLDER, "cases", name), "utf8")).join("\n")}`,
      );
    },
  };
}
