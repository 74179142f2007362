/** Visits of the example practice with faults: half of their keys, other answers, series that end early or lose a channel. */
import { readdirSync, readFileSync } from "node:fs";
import { parse } from "yaml";
import type { Results } from "../../src/kernel/results.js";
import { type Answer, send } from "../examiner/bench.js";
import { type Around, type Json, other, schemaFile } from "./any-record.js";
import { type Chance, chance } from "./random.js";

const PRACTICE = "examples/skarn-point";
const yaml = (path: string) => parse(readFileSync(path, "utf8")) as Json;
const lab = JSON.stringify(yaml(`${PRACTICE}/lab.yaml`));
const homes = readdirSync(`${PRACTICE}/clients`).map((id) => `${PRACTICE}/clients/${id}`);

/** Names of files and instruments, heads, and what only fits together with them. */
const KEPT = new Set(
  (
    "waymark client id date label purpose consent withdrawn birth_date series instrument device file columns phases " +
    "confirmed training_log ergometer scanner caliper spirometer scales stadiometer measure measures primary_outcomes"
  ).split(" "),
);
const KNOWN = { profile: readdirSync("src/plan/profiles").map((file) => file.replace(".yaml", "")) };

/** A client of the example with two visits that are other than they were; a visit that is refused is left out. */
export async function oddVisits(seed: number, refused: (answer: Answer) => void = () => {}): Promise<Results[]> {
  const c = chance(seed);
  const home = homes[seed % homes.length] as string;
  const around = (date: string): Around => ({ c, share: c.between(0.01, 0.15), date, kept: KEPT, known: KNOWN });
  const drawn = (path: string, schema: string, date: string) =>
    other(yaml(path), schemaFile(schema), schema, "", around(date)) as Record<string, Json>;
  const client = drawn(`${home}/client.yaml`, "client.schema.json", "2026-06-01");
  const made: Results[] = [];
  const visits = readdirSync(home).filter((name) => /^\d{4}-/.test(name));
  for (const name of visits.slice(0, 2)) {
    const folder = `${home}/${name}`;
    const files = readdirSync(folder).filter((file) => /\.(csv|txt)$/.test(file));
    const answer = await send({
      lab,
      client: JSON.stringify(client),
      session: JSON.stringify(drawn(`${folder}/session.yaml`, "session.schema.json", name.slice(0, 10))),
      files: Object.fromEntries(
        files.map((file) => {
          const text = readFileSync(`${folder}/${file}`, "utf8");
          return [file, file === "log.csv" ? text : faulty(text, c)];
        }),
      ),
      earlier: made,
      folder: folder.slice(PRACTICE.length + 1),
    });
    if (answer.results === undefined) refused(answer);
    else made.push(answer.results);
  }
  return made;
}

/** A series that ends early, or with a channel that dies. */
function faulty(text: string, c: Chance): string {
  const lines = text.split("\n");
  if (c.happens(0.2)) return `${lines.slice(0, Math.floor(lines.length * c.between(0.05, 0.8))).join("\n")}\n`;
  if (c.happens(0.6)) return text;
  const from = Math.max(2, Math.floor(lines.length * c.between(0.05, 0.9)));
  const mark = lines[0]?.includes(";") ? ";" : ",";
  const dead = Math.floor(c.between(1, lines[0]?.split(mark).length ?? 2));
  const without = (line: string) =>
    line
      .split(mark)
      .map((cell, i) => (i === dead ? "" : cell))
      .join(mark);
  return lines.map((line, i) => (i <= from || line === "" ? line : without(line))).join("\n");
}
