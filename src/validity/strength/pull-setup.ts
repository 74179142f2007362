/**
 * The pull is made at the joint angles of the second pull, sampled fast enough, and the force is stated as gross or
 * net.
 */
import type { Rule } from "../../kernel/rule.js";
import { finding, notRecorded } from "../finding.js";

const AFFECTED = ["mid_thigh_pull_force", "mid_thigh_pull_force_per_mass"] as const;

export const rule: Rule = {
  id: "pull-setup",
  revision: 1,
  title: "Joint angles and sampling of the pull",
  section: "strength",
  source: {
    authors: "Comfort P, Dos'Santos T, Beckham GK, Stone MH, Guppy SN, Haff GG",
    year: 2019,
    title: "Standardization and methodological considerations for the isometric midthigh pull",
    journal: "Strength Cond J 41(2):57–79",
    doi: "10.1519/SSC.0000000000000433",
    where: "knee 125–145°, hip 140–150°, sampling from 500 Hz, gross or net stated",
    verified: "memory",
  },
  judge: ({ visit }) => {
    const pull = visit.session.strength?.mid_thigh_pull;
    if (pull === undefined) return [];
    const missing = (["knee_degrees", "hip_degrees", "sampling_hz", "force"] as const).filter(
      (name) => pull[name] === undefined,
    );
    const outside = (what: string, value: number | undefined, low: number, high: number, unit: string) =>
      value === undefined || (value >= low && value <= high)
        ? []
        : [
            finding(
              "weakens",
              `${what} ${value} ${unit}`,
              `${low} to ${high} ${unit}`,
              "Another position or a slow sampling gives another peak.",
              AFFECTED,
            ),
          ];
    return [
      ...(missing.length > 0
        ? [notRecorded(missing.join(", "), "The next test must be set up the same.", AFFECTED)]
        : []),
      ...outside("knee angle", pull.knee_degrees, 125, 145, "°"),
      ...outside("hip angle", pull.hip_degrees, 140, 150, "°"),
      ...outside("sampling", pull.sampling_hz, 500, 5000, "Hz"),
    ];
  },
};
