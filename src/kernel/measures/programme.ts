import type { Catalogue } from "../measure.js";

const section = { section: "programme" } as const;
/** What a plan is made of. Ids that begin with programme_week or intensity_domains are shown to the client once signed. */
export const programmeMeasures = {
  programme_state: { ...section, title: "State of the plan" },
  vigorous_sessions: { ...section, title: "Vigorous sessions" },
  demand_shortfall: { ...section, title: "What the goal asks for, and what was measured" },
  intensity_basis: { ...section, title: "What the intensities rest on" },
  intensity_domains: { ...section, title: "Training intensities" },
  intensity_equivalents: { ...section, title: "Easy walking by grade and load" },
  programme_changes: { ...section, title: "What changed in the plan, and why" },
  done_against_planned: { ...section, title: "Done against planned" },
  programme_compliance: { ...section, title: "Minutes done, of those planned", unit: "%", decimals: 0 },
  programme_rules: { ...section, title: "What the weeks are laid out by" },
  programme_weeks: { ...section, title: "Weeks up to the goal" },
  programme_sessions: { ...section, title: "Sessions of the coming weeks" },
  strength_work: { ...section, title: "Strength work" },
  mobility_work: { ...section, title: "Mobility and balance" },
  programme_overrides: { ...section, title: "Set by the practitioner" },
  expected_gain: { ...section, title: "What training did for groups" },
  programme_readiness: { ...section, title: "Supervision and readiness" },
  stop_criteria: { ...section, title: "When to end a session or a test" },
  scope_of_practice: { ...section, title: "Scope of this plan" },
} as const satisfies Catalogue;
