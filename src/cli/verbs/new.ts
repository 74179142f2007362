import { newClient } from "../new/new-client.js";
import { newPractice } from "../new/new-practice.js";
import { newSession } from "../new/new-session.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark new practice DIR            a folder to work in: lab.yaml, editor settings, Git with a check
waymark new client [ID]             a client folder with the next free pseudonym, such as c-018
waymark new session CLIENT --date YEAR-MONTH-DAY
                                    a visit folder with a session file to fill in

  --birth-date DAY, --sex female|male   with client; without them check asks for both
  --like last|VISIT   with session: protocol, instruments and postures of an earlier visit, of this client
                      or another; no measured value, no screening answer and no calibration is copied
  --purpose WORD      with session: baseline, retest, reliability or other; without it baseline for the
                      first visit, retest for others
  --label WORD        with session: the end of the folder's name; without it the purpose

No file that is there is overwritten. new practice in a practice renews only its copies of the schemas.
`;

export const verb: Verb = {
  help: HELP,
  options: {
    "birth-date": { type: "string" },
    sex: { type: "string" },
    date: { type: "string" },
    like: { type: "string" },
    label: { type: "string" },
    purpose: { type: "string" },
  },
  async run([what, ...words], flags, io) {
    switch (what) {
      case "practice": {
        const [folder, ...rest] = words;
        if (folder === undefined || rest.length > 0) throw new WrongUse("new practice takes a folder");
        newPractice(folder, io);
        return 0;
      }
      case "client":
        newClient(words, flags, io);
        return 0;
      case "session":
        newSession(words, flags, io);
        return 0;
      default:
        throw new WrongUse(`new takes practice, client or session${what === undefined ? "" : `, not ${what}`}`);
    }
  },
};
