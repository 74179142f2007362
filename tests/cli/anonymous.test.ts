/** An anonymous archive: nothing of the record tells who it was, and its numbers can still be computed again. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { bandBirth, completedYears } from "../../src/cli/anonymous/birth.js";
import { plainFile } from "../../src/cli/anonymous/raw-file.js";
import { addDays } from "../../src/kernel/days.js";
import { decimalAge } from "../../src/validate/calendar.js";
import fc from "../tools/properties.js";
import { type Copy, copyPractice } from "./practice-copy.js";

const CLIENTS = ["c-017", "c-023", "c-031", "c-044"];
/** Words that no program would write, one for every place where a person can write freely. */
const PLANTED = ["marmalade", "quincetree", "zeppelin", "bumblebee", "peppermint", "gooseberry"];
let copy: Copy;
const archives = new Map<string, Record<string, Uint8Array>>();
const dates = new Map<string, Set<string>>();
const sentences = new Map<string, Set<string>>();

const walk = (value: unknown, see: (text: string, key: string) => void, key = ""): void => {
  if (typeof value === "string") see(value, key);
  else if (typeof value === "object" && value !== null)
    for (const [k, inner] of Object.entries(value)) walk(inner, see, Array.isArray(value) ? key : k);
};
const FREE =
  /^(remarks?|notes?|goal|practitioner|address|description|letterhead|confirmed|sport|detail|by_role|from|reference_note)$/;

beforeAll(() => {
  copy = copyPractice(CLIENTS);
  const lab = join(copy.root, "lab.yaml");
  writeFileSync(
    lab,
    `${readFileSync(lab, "utf8").replace(/^address: .*$/m, "address: zeppelin street 4")}\n# bumblebee\n`,
  );
  for (const id of CLIENTS) {
    const folder = join(copy.root, "clients", id);
    const person = join(folder, "client.yaml");
    writeFileSync(person, `${readFileSync(person, "utf8")}reference_note: peppermint told us so on 2026-01-09\n`);
    for (const visit of readdirSync(folder).filter((name) => /^\d/.test(name))) {
      const path = join(folder, visit, "session.yaml");
      const text = readFileSync(path, "utf8").replace(/\nremarks:[\s\S]*$/, "\n");
      writeFileSync(path, `${text}\nremarks:\n  - The marmalade of 14 May 2025, see 2025-05-14.\n# quincetree\n`);
      for (const csv of readdirSync(join(folder, visit)).filter((name) => name.endsWith(".csv"))) {
        const file = join(folder, visit, csv);
        const [head = "", ...rows] = readFileSync(file, "utf8").split("\n");
        const delimiter = head.includes(";") ? ";" : ",";
        const noted = rows.map((row) => (row === "" ? row : `${row}${delimiter}gooseberry`));
        writeFileSync(file, [`${head}${delimiter}Comment`, ...noted].join("\n"));
      }
    }
    const found = new Set<string>(["2025-05-14", "2026-01-09"]);
    const said = new Set<string>();
    for (const file of readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((f) => f.endsWith(".yaml"))) {
      walk(parse(readFileSync(join(folder, file), "utf8")), (value, key) => {
        if (/^\d{4}-\d{2}-\d{2}$/.test(value)) found.add(value);
        else if (FREE.test(key) && value.length > 5) said.add(value);
      });
    }
    dates.set(id, found);
    sentences.set(id, said);
    const made = copy.run("archive", id, "--anonymous", "--secret", "correct horse battery");
    expect(made, made.err).toMatchObject({ code: 0, err: "" });
    archives.set(id, unzipSync(readFileSync(made.out.trim())));
  }
}, 120_000);
afterAll(() => copy.remove());

const MONTHS = "January February March April May June July August September October November December".split(" ");
/** The forms in which a date could survive. */
const forms = (date: string) => {
  const [year = "", month = "", day = ""] = date.split("-");
  return [
    date,
    `${day}.${month}.${year}`,
    `${year}${month}${day}`,
    `${day}/${month}/${year}`,
    `${month}/${day}/${year}`,
    `${Number(day)} ${MONTHS[Number(month) - 1]} ${year}`,
  ];
};

describe.each(CLIENTS)("the anonymous archive of %s", (id) => {
  const whole = () =>
    Object.entries(archives.get(id) ?? {})
      .map(([name, bytes]) => `${name}\n${strFromU8(bytes)}`)
      .join("\n");

  it("holds no date of the record, in any form", () => {
    const text = whole();
    expect(dates.get(id)?.size).toBeGreaterThan(4);
    for (const date of dates.get(id) ?? [])
      for (const form of forms(date)) expect(text.includes(form), form).toBe(false);
  });

  it("holds no remark, comment, name, address or other free text, and no pseudonym of the practice", () => {
    const text = whole();
    for (const word of PLANTED) expect(text.includes(word), word).toBe(false);
    expect(sentences.get(id)?.size).toBeGreaterThan(1);
    for (const sentence of sentences.get(id) ?? []) expect(text.includes(sentence), sentence).toBe(false);
    expect(text).not.toContain(id);
    expect(text).not.toMatch(/Skarn|report[^/\n]*\.(html|pdf)/);
  });

  it("keeps the measured numbers, the days between visits and the years of age", () => {
    const files = archives.get(id) ?? {};
    const sessions = Object.keys(files)
      .filter((name) => name.endsWith("session.yaml"))
      .sort();
    const original = readdirSync(join(copy.root, "clients", id))
      .filter((name) => /^\d/.test(name))
      .sort();
    expect(sessions).toHaveLength(original.length);
    const days = (names: readonly string[]) =>
      names.map((n) => Date.parse(/\d{4}-\d\d-\d\d/.exec(n)?.[0] ?? "") / 86_400_000);
    const gaps = (list: readonly number[]) => list.slice(1).map((day, i) => day - (list[i] ?? 0));
    expect(gaps(days(sessions))).toEqual(gaps(days(original)));
    const person = parse(
      strFromU8(files[sessions[0]?.replace(/[^/]+\/session\.yaml$/, "client.yaml") ?? ""] ?? new Uint8Array()),
    ) as { birth_date: string };
    const before = parse(readFileSync(join(copy.root, "clients", id, "client.yaml"), "utf8")) as { birth_date: string };
    sessions.forEach((name, i) => {
      const session = parse(strFromU8(files[name] ?? new Uint8Array())) as {
        date: string;
        size?: { mass_kg: unknown };
      };
      const old = parse(
        readFileSync(join(copy.root, "clients", id, original[i] ?? "", "session.yaml"), "utf8"),
      ) as typeof session;
      expect(session.size?.mass_kg).toEqual(old.size?.mass_kg);
      expect(Math.floor(decimalAge(person.birth_date, session.date))).toBe(
        Math.floor(decimalAge(before.birth_date, old.date)),
      );
    });
  });
});

describe("archive --anonymous", () => {
  it("verifies: what is left gives the results that are in it", () => {
    const { out } = copy.run("archive", "c-023", "--anonymous", "--secret", "correct horse battery");
    const verified = copy.run("verify", out.trim());
    expect(verified.out).toMatch(/files agree with the manifest/);
    expect(verified.out).toMatch(/2 of 2 visits agree with what is computed now\./);
    expect(verified.code).toBe(0);
  });
  it("gives the same bytes for the same words, others for other words, and needs enough of them", () => {
    const make = (...words: string[]) => copy.run("archive", "c-044", "--anonymous", ...words);
    const first = make("--secret", "correct horse battery").out.trim();
    const bytes = readFileSync(first);
    expect(readFileSync(make("--secret", "correct horse battery").out.trim()).equals(bytes)).toBe(true);
    expect(make("--secret", "another horse battery").out.trim()).not.toBe(first);
    expect(make().out).not.toBe(make().out);
    expect(make("--secret", "short").code).toBe(2);
    expect(copy.run("archive", "c-044", "--secret", "correct horse battery").code).toBe(2);
  });
});

describe("parts", () => {
  it("gives a birth date with the same years of age at every visit, whatever the dates", () => {
    const day = fc.integer({ min: 0, max: 36_000 }).map((n) => addDays("1920-01-01", n));
    fc.assert(
      fc.property(
        day,
        fc.array(fc.integer({ min: 3000, max: 30_000 }), { minLength: 1, maxLength: 6 }),
        (birth, ages) => {
          const visits = ages.map((days) => addDays(birth, days));
          const made = bandBirth(birth, visits);
          return visits.every((visit) => completedYears(made, visit) === completedYears(birth, visit));
        },
      ),
    );
    // One visit tells a whole year of births: the middle is half a year from its ends, whatever the day was.
    expect(bandBirth("1984-09-14", ["2026-03-02"])).toBe(bandBirth("1985-01-20", ["2026-03-02"]));
  });
  it("keeps mapped columns and numbers of a raw file, and nothing an instrument wrote around them", () => {
    const text = "Name;Jane Doe\nDatum;02.03.2026\nZeit;VO2;Kommentar\ns;mL/min;\n5;312,5;gut\n10;err;Jane\n";
    const mapping = {
      header_row: 3,
      skip_rows: 1,
      decimal: ",",
      missing: ["err"],
      columns: { time_s: { column: "Zeit", unit: "s" }, vo2_l_min: { column: "VO2", unit: "mL/min" } },
    } as const;
    expect(plainFile(new TextEncoder().encode(text), mapping, ";")).toBe("Zeit;VO2\n5;312,5\n10;err\n");
    const summary = new TextEncoder().encode(`${text}\nMittel;1\nvon Jana;2\n`);
    expect(plainFile(summary, { ...mapping, ends_before: ["Mittel"] }, ";")).toBe("Zeit;VO2\n5;312,5\n10;err\n");
  });
});
