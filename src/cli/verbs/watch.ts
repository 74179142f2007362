import { findPractice, openPractice, select } from "../practice.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark watch [VISIT]  the report in a browser on this machine, anew at every save

  VISIT           a visit or client folder; without one, a list of all visits to choose from
  --edition NAME  practitioner, client or referral; without it, practitioner
  --port N        a fixed port; without it, a free one
  --poll          look at the files twice a second, for disks that do not tell of changes (network shares)

The page keeps its place while you write. While a file holds an error, the page says so and keeps the last
report without one. Nothing is written: results.yaml and reports come from waymark build.
Only programs on this machine can reach it. It ends with Ctrl-C.
`;

export const verb: Verb = {
  help: HELP,
  options: { edition: { type: "string" }, port: { type: "string" }, poll: { type: "boolean" } },
  async run(words, flags, io) {
    if (words.length > 1) throw new WrongUse("watch takes one visit, or none");
    const port = flags.port === undefined ? 0 : Number(flags.port);
    if (!Number.isInteger(port) || port < 0 || port > 65_535) throw new WrongUse("--port takes a number up to 65535");
    const { EDITIONS } = await import("../editions.js");
    const edition = flags.edition ?? "practitioner";
    if (!EDITIONS.some((name) => name === edition))
      throw new WrongUse(`there is no edition "${String(edition)}"; there are ${EDITIONS.join(", ")}`);
    const practice = openPractice(findPractice(words[0] ?? io.cwd));
    const asked = words.length === 0 ? [] : [...select(practice, words, io.cwd)];
    const visit = asked.at(-1)?.replace(/^clients\//, "");
    const [{ openLive }, { serve }, { watchChanges }] = await Promise.all([
      import("../watch/live.js"),
      import("../watch/server.js"),
      import("../watch/changes.js"),
    ]);
    const live = openLive(practice.root);
    const server = await serve(live, port).catch((error: NodeJS.ErrnoException) => {
      throw new WrongUse(`port ${port} cannot be had (${error.code}); leave --port out for a free one`);
    });
    const stop = watchChanges(practice.root, flags.poll === true, server.changed);
    io.out(`${server.address}${visit === undefined ? "/" : `/visit/${visit}?edition=${String(edition)}`}\n`);
    io.say("Ctrl-C ends it.\n");
    await new Promise<void>((resolve) => {
      process.once("SIGINT", resolve);
      process.once("SIGTERM", resolve);
    });
    stop();
    await server.close();
    return 0;
  },
};
