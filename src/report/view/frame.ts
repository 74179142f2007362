/** What all editions share: language, letterhead, facts of the visit, cautions, and how the report was made. */
import { type Context, conditionName, opening, quantityOf, told, valueText } from "./context.js";
import type { Fact, Frame, Head } from "./types.js";

export function frame(
  context: Context,
  edition: "practitioner" | "client" | "referral",
  style: string,
  logo: string,
): Frame {
  const { results, speech } = context;
  const title = speech.say(`editions.${edition}.title`);
  return {
    language: speech.language,
    documentTitle: speech.say("report.document_title", {
      title,
      client: results.client,
      date: speech.date(results.date),
    }),
    style,
    edition,
    words: {},
    head: head(context, title, logo),
    cautions: cautions(context),
    made: edition === "practitioner" ? made(context) : [digestFact(context)],
    footDigest: speech.say("report.digest", { digest: context.digest.slice(0, 12) }),
  };
}

function head(context: Context, title: string, logo: string): Head {
  const { results, laboratory, client, speech } = context;
  const fact = (name: string, value: string | undefined): Fact[] =>
    value === undefined || value === "" ? [] : [{ name: speech.say(`facts.${name}`), value }];
  const age = quantityOf(context, "age");
  const goal = client.goals?.[0];
  const lines = [laboratory.address, laboratory.letterhead].flatMap((text) => text?.split("\n") ?? []);
  return {
    laboratory: laboratory.name,
    lines: lines.filter((line) => line.trim() !== ""),
    hasLogo: logo !== "",
    logo,
    title,
    subtitle: speech.say("report.subtitle", {
      client: results.client,
      date: speech.date(results.date),
      purpose: speech.say(`purposes.${results.purpose}`),
    }),
    facts: [
      ...fact("client", results.client),
      ...fact("date", speech.date(results.date)),
      ...fact("visit", opening(speech.say(`purposes.${results.purpose}`))),
      ...fact("sex", speech.say(`sexes.${results.sex}`)),
      ...fact(
        "age",
        age
          ? speech.say("report.years", { age: valueText(context, age) })
          : speech.say("report.years", { age: speech.number(results.ageYears, 1) }),
      ),
      ...fact("goal", goal?.goal),
      ...fact("goal_date", goal?.date === undefined ? undefined : speech.date(goal.date)),
      ...fact(
        "earlier",
        context.earlier.length === 0 ? undefined : speech.list(context.earlier.map((visit) => speech.date(visit.date))),
      ),
    ],
  };
}

/** The cautions that stand in every edition; the scan's only where there was one. */
function cautions({ speech, results }: Context): string[] {
  const measured = (section: string) => results.entries.some((entry) => entry.id.startsWith(section));
  return [
    speech.say("cautions.not_diagnosis"),
    speech.say("cautions.stop"),
    speech.say("cautions.not_looked_for"),
    ...(measured("dxa_") || measured("fat_mass") ? [speech.say("cautions.scan")] : []),
    ...(measured("altitude_") ? [speech.say("cautions.altitude")] : []),
    speech.say("cautions.local"),
  ];
}

const digestFact = ({ speech, digest }: Context): Fact => ({ name: speech.say("facts.digest"), value: digest });

function made(context: Context): Fact[] {
  const { results, speech } = context;
  return [
    digestFact(context),
    ...results.sources.map(({ file, sha256 }) => ({ name: file, value: sha256.slice(0, 12) })),
    ...Object.entries(results.conditions).map(([name, value]) => ({
      name: conditionName(context, name),
      value: told(context, value),
    })),
    ...Object.entries(results.choices).map(([name, value]) => ({
      name: speech.find(`choices.${name}`) ?? opening(name.replaceAll("_", " ")),
      value: / /.test(String(value)) ? told(context, String(value)) : String(value),
    })),
  ];
}
