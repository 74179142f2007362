import type { Catalogue } from "../measure.js";

const section = { section: "screening" } as const;
export const screeningMeasures = {
  screening_decision: { ...section, title: "Screening decision" },
  screening_reasons: { ...section, title: "Reasons for the decision" },
  medical_clearance: { ...section, title: "Medical clearance" },
  physician_sign_off: { ...section, title: "Limits agreed with the responsible physician" },
  referral_flags: { ...section, title: "Findings beyond published limits for referral" },
  screening_answers: { ...section, title: "Screening answers" },
  test_events: { ...section, title: "Reasons to stop that occurred" },
} as const satisfies Catalogue;
