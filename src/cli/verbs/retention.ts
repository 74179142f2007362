import { readDate } from "../../validate/calendar.js";
import { readDocument } from "../check-practice.js";
import { Unreadable } from "../files.js";
import { findPractice, openPractice } from "../practice.js";
import { retention } from "../retention.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark retention  clients whose records are past the time set in lab.yaml (retention_years)

  --on DAY   as on this day, year-month-day; without it, today
  --all      every client, with the day until which the record is kept
  --json     the list as data

The time runs from a client's last visit. Nothing is deleted: make an archive if one is wanted, look whether a
law, a study or an open question asks for more time, then remove the folder yourself. What Git has in its
history stays there until that is rewritten too.
`;

export const verb: Verb = {
  help: HELP,
  options: { on: { type: "string" }, all: { type: "boolean" }, json: { type: "boolean" } },
  async run(words, flags, io) {
    if (words.length > 0) throw new WrongUse("retention looks at the whole practice and takes no path");
    const on = typeof flags.on === "string" ? flags.on : today();
    if (readDate(on) === undefined) throw new WrongUse(`--on takes a day, year-month-day, not ${on}`);
    const root = findPractice(io.cwd);
    const years = (readDocument(root, "lab.yaml").value as { retention_years?: unknown } | undefined)?.retention_years;
    if (typeof years !== "number")
      throw new Unreadable(
        "lab.yaml",
        "sets no retention_years",
        "Write there how many years your local code asks for.",
      );
    const { clients } = openPractice(root);
    const kept = retention(clients, years, on);
    const shown = flags.all ? kept : kept.filter((one) => one.isPast);
    if (flags.json) {
      io.out(
        `${JSON.stringify(
          shown.map((one) => ({ ...one, lastVisit: one.lastVisit ?? null, until: one.until ?? null })),
          null,
          2,
        )}\n`,
      );
      return 0;
    }
    for (const { client, lastVisit, until, isPast } of shown)
      io.out(
        lastVisit === undefined
          ? `${client}  no visit\n`
          : `${client}  last visit ${lastVisit}  ${isPast ? "past since" : "kept until"} ${until}\n`,
      );
    const past = kept.filter((one) => one.isPast).length;
    io.say(
      `${past} of ${kept.length} ${kept.length === 1 ? "client" : "clients"} ${past === 1 ? "is" : "are"} past ${years} years on ${on}. Nothing was deleted.\n`,
    );
    return 0;
  },
};

/** The day by this machine's clock and time zone. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
