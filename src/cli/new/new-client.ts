/** Makes a client folder. The program proposes the pseudonym, so that nobody is tempted to use a name. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { readDate } from "../../validate/calendar.js";
import { Unreadable, writeAtomically } from "../files.js";
import { findPractice, openPractice } from "../practice.js";
import { type Flags, type Io, WrongUse } from "../verb.js";
import { clientText } from "./practice-files.js";

const ID = /^[a-z]{1,3}-\d{2,6}$/;

export function newClient(words: readonly string[], flags: Flags, io: Io): void {
  const root = findPractice(io.cwd);
  const taken = openPractice(root).clients.map((client) => client.id);
  const [asked, ...rest] = words;
  if (rest.length > 0) throw new WrongUse("new client takes one id, or none");
  const id = asked ?? nextId(taken);
  if (!ID.test(id))
    throw new WrongUse(
      `${JSON.stringify(id)} is no pseudonym: one to three small letters, a hyphen and a number, such as ${nextId(taken)}. It must not hint at the person`,
    );
  if (taken.includes(id))
    throw new Unreadable(`clients/${id}`, "is taken", `The next free id is ${nextId(taken)}: waymark new client.`);
  const sex = text(flags.sex);
  const birthDate = text(flags["birth-date"]);
  if (sex !== undefined && sex !== "female" && sex !== "male") throw new WrongUse("--sex takes female or male");
  if (birthDate !== undefined && readDate(birthDate) === undefined)
    throw new WrongUse("--birth-date takes year-month-day, such as 1984-09-01");
  const folder = join(root, "clients", id);
  mkdirSync(folder, { recursive: true });
  writeAtomically(
    join(folder, "client.yaml"),
    clientText({ id, ...(birthDate ? { birthDate } : {}), ...(sex ? { sex } : {}) }),
  );
  const missing = [birthDate ? "" : "birth_date", sex ? "" : "sex"].filter((key) => key !== "");
  io.out(
    [
      `clients/${id}/client.yaml`,
      "",
      ...(missing.length === 0 ? [] : [`Fill in ${missing.join(" and ")} there.`]),
      `Note who ${id} is in your list of contacts, outside this folder.`,
      `Then: waymark new session ${id} --date YEAR-MONTH-DAY`,
      "",
    ].join("\n"),
  );
}

const text = (flag: unknown): string | undefined => (typeof flag === "string" ? flag : undefined);

/** The id after the highest one, in the form the practice uses: "c-018" after "c-017". */
export function nextId(taken: readonly string[]): string {
  const numbered = taken.flatMap((id) => {
    const match = /^([a-z]{1,3}-)(\d+)$/.exec(id);
    return match ? [{ stem: match[1] ?? "", digits: match[2] ?? "" }] : [];
  });
  const highest = numbered.sort((a, b) => Number(a.digits) - Number(b.digits)).at(-1);
  if (highest === undefined) return "c-001";
  return highest.stem + String(Number(highest.digits) + 1).padStart(highest.digits.length, "0");
}
