/**
 * The plan as an iCalendar text (RFC 5545): the coming sessions, later weeks, tests and the goal, all day long. Stamps come
 * from the visit's date, and an event's name from client, day and kind, so that the same results give the same bytes and
 * a plan laid out anew replaces its own events. Nothing is given before the plan is signed. Texts are in the language of
 * the laboratory's reports.
 */

import { addDays, daysBetween } from "../kernel/days.js";
import type { Cell, Table } from "../kernel/measure.js";
import type { Results } from "../kernel/results.js";
import type { Speech } from "../kernel/speech.js";
import { columnOf, judgementOf, tableOf } from "./recorded.js";

interface Happening {
  readonly key: string;
  readonly from: string;
  /** First day after it. */
  readonly to: string;
  readonly summary: string;
  readonly description: string;
}

/** Text with CRLF line ends, lines of 75 octets at most; undefined where no signed plan stands in the results. */
export function calendarOf(results: Results, speech: Speech): string | undefined {
  if (judgementOf(results, "programme_state")?.verdict !== "ready") return undefined;
  const weeks = tableOf(results, "programme_weeks");
  if (weeks === undefined) return undefined;
  const sessions = tableOf(results, "programme_sessions");
  const happenings = [
    ...(sessions ? sessionsOf(sessions, speech) : []),
    ...weeksOf(weeks, sessions, speech),
    ...marksOf(weeks, speech),
  ];
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    `PRODID:-//Waymark//Training programme//${speech.language.toUpperCase()}`,
    "CALSCALE:GREGORIAN",
    `X-WR-CALNAME:${escaped(speech.say("calendar.name", { client: results.client }))}`,
    ...happenings.flatMap((one) => eventLines(one, results)),
    "END:VCALENDAR",
  ];
  return `${lines.map(folded).join("\r\n")}\r\n`;
}

const compact = (iso: string): string => iso.replaceAll("-", "");

function eventLines(one: Happening, results: Results): string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${results.client}-${one.key}@waymark.invalid`,
    `DTSTAMP:${compact(results.date)}T000000Z`,
    `SEQUENCE:${daysBetween("2000-01-01", results.date)}`,
    `DTSTART;VALUE=DATE:${compact(one.from)}`,
    `DTEND;VALUE=DATE:${compact(one.to)}`,
    `SUMMARY:${escaped(one.summary)}`,
    ...(one.description === "" ? [] : [`DESCRIPTION:${escaped(one.description)}`]),
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

function sessionsOf(table: Table, speech: Speech): Happening[] {
  const told = (cell: Cell | undefined) => speech.told(String(cell ?? ""));
  const column = (key: string) => columnOf(table, key);
  const [dates, kinds, minutes] = [column("date"), column("kind"), column("minutes")];
  const [what, heartRate, carried] = [column("prescription"), column("heart_rate"), column("load")];
  const seen = new Map<string, number>();
  return dates.map((cell, i) => {
    const date = String(cell);
    const base = `${date}-${String(kinds[i]).replaceAll(" ", "-")}`;
    const count = (seen.get(base) ?? 0) + 1;
    seen.set(base, count);
    const beats =
      heartRate[i] === null || heartRate[i] === undefined
        ? ""
        : speech.say("calendar.heart_rate", { range: told(heartRate[i]) });
    const kilograms =
      carried[i] === null || carried[i] === undefined ? "" : speech.say("calendar.carried", { mass: told(carried[i]) });
    return {
      key: count === 1 ? base : `${base}-${count}`,
      from: date,
      to: addDays(date, 1),
      summary: speech.say("calendar.session", { kind: capital(told(kinds[i])), minutes: told(minutes[i]) }),
      description: [told(what[i]), beats, kilograms].filter((part) => part !== "").join("\n"),
    };
  });
}

/** Weeks whose sessions are not written out yet. */
function weeksOf(weeks: Table, sessions: Table | undefined, speech: Speech): Happening[] {
  const last = sessions ? String(columnOf(sessions, "date").at(-1) ?? "") : "";
  const column = (key: string) => columnOf(weeks, key);
  const [phases, minutes, hard, easier] = [column("phase"), column("minutes"), column("hard"), column("easier")];
  return column("monday").flatMap((cell, i) => {
    const monday = String(cell);
    if (monday <= last || minutes[i] === 0) return [];
    return [
      {
        key: `${monday}-week`,
        from: monday,
        to: addDays(monday, 7),
        summary: speech.say(easier[i] === "easier" ? "calendar.easier_week" : "calendar.week", {
          phase: speech.told(String(phases[i])),
          minutes: speech.told(String(minutes[i])),
        }),
        description: speech.say("calendar.later", { hard: speech.told(String(hard[i])) }),
      },
    ];
  });
}

/** Tests and the goal: "test on 2026-05-11; goal on 2026-09-12". */
function marksOf(weeks: Table, speech: Speech): Happening[] {
  return columnOf(weeks, "mark").flatMap((cell) =>
    [...String(cell ?? "").matchAll(/(test|goal|arrival) on (\d{4}-\d{2}-\d{2})/g)].map((match): Happening => {
      const [, kind, date] = match as unknown as [string, string, string];
      return {
        key: `${date}-${kind}`,
        from: date,
        to: addDays(date, 1),
        summary: speech.say(`calendar.${kind}`),
        description: "",
      };
    }),
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Backslash, semicolon, comma and line end, as RFC 5545 section 3.3.11 asks. */
const escaped = (text: string): string =>
  text
    .replace(/\\/g, "\\\\")
    .replace(/;/g, "\\;")
    .replace(/,/g, "\\,")
    .replace(/\r\n|\r|\n/g, "\\n");

const LINE_OCTETS = 75;

/** A content line folded at 75 octets; no character is cut in two (section 3.1). */
function folded(line: string): string {
  let out = "";
  let octets = 0;
  for (const character of line) {
    const size = octetsOf(character.codePointAt(0) as number);
    if (octets + size > LINE_OCTETS) {
      out += "\r\n ";
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return out;
}
const octetsOf = (code: number): number => (code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4);
