/** The laboratory's own event-demand profiles, from the files that lab.yaml names under profiles. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { EventProfile } from "../kernel/generated/event-profile.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import { catalogue, measureInfo } from "../kernel/measures.js";
import { nearest } from "../kernel/near.js";
import { readYaml } from "../read/yaml.js";
import type { Checker } from "../validate/checker.js";
import { validateDocument } from "../validate/visit.js";
import { readFile } from "./files.js";

export interface OwnProfiles {
  readonly profiles: readonly EventProfile[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Profiles beside the built-in ones. A faulty file, or one with an id that is taken, is reported and not used. */
export function laboratoryProfiles(
  root: string,
  laboratory: Laboratory,
  checker: Checker,
  builtIn: readonly EventProfile[],
): OwnProfiles {
  const taken = builtIn.map((profile) => profile.id);
  const profiles: EventProfile[] = [];
  const diagnostics: Diagnostic[] = [];
  for (const file of laboratory.profiles ?? []) {
    const document = readYaml(file, readFile(root, file).bytes);
    const faults = [...validateDocument("event-profile", document, checker)];
    if (!faults.some((fault) => fault.severity === "error")) {
      const profile = document.value as EventProfile;
      const wrong = (found: string, expected: string, path: readonly (string | number)[]) =>
        faults.push({
          code: "event-profile",
          severity: "error",
          at: document.place(path),
          found,
          expected,
          why: "a profile with a slip in it would hold clients against the wrong demand",
        });
      if (taken.includes(profile.id)) wrong(`the id ${profile.id}, which is taken`, "an id of its own", ["id"]);
      profile.demands.forEach((demand, i) => {
        if (measureInfo(demand.measure)?.unit !== undefined) return;
        const near = nearest(demand.measure, Object.keys(catalogue));
        wrong(`"${demand.measure}"`, `the id of a measure${near ? `, such as ${near}` : ""}`, [
          "demands",
          i,
          "measure",
        ]);
      });
      if (!faults.some((fault) => fault.severity === "error")) {
        taken.push(profile.id);
        profiles.push(profile);
      }
    }
    diagnostics.push(...faults);
  }
  return { profiles, diagnostics };
}
