/** What the weeks are laid out by, each rule with its source or the word convention. */
import type { Cell } from "../../kernel/measure.js";
import type { Notebook } from "../../kernel/notebook.js";
import type { Settings } from "../settings.js";
import type { LaidWeek } from "./lay-out.js";
import { info as taperInfo } from "./taper.js";

export function writeRules(book: Notebook, laid: readonly LaidWeek[], settings: Settings): void {
  const taper = laid.find(({ week }) => week.phase === "taper")?.week;
  const days = taper === undefined ? 0 : settings.goalDay - taper.monday;
  book.table(
    "programme_rules",
    [
      { key: "rule", title: "Rule" },
      { key: "value", title: "Value" },
      { key: "source", title: "Source" },
    ],
    [
      ...settings.from.map((row): Cell[] => [...row]),
      ["Phases", "foundation 40 %, build 35 %, specific 25 % of the weeks before the taper", "convention"],
      [
        "Days before the goal",
        days === 0
          ? "no taper: fewer than four weeks to the goal"
          : `${settings.taperReduction} % less over the last ${days} days, effort and number of sessions kept`,
        days === 0 ? "convention" : `${taperInfo.source.authors} 2007: 41 to 60 % less over two weeks, in competitors`,
      ],
      ...(taper?.levelBefore === undefined
        ? []
        : [
            [
              "Minutes a week that the taper is reckoned from",
              String(taper.levelBefore),
              "the last whole loading week",
            ],
          ]),
      [
        "Easy minutes",
        "most of every week",
        "observed in endurance athletes: 75 of 100 sessions easy (Seiler and Kjerland 2006)",
      ],
      [
        "After four weeks or more without training",
        "recent gains are lost: start again from the first week",
        "Mujika and Padilla 2001, review",
      ],
    ],
    taperInfo,
    [],
  );
}
