/** FEV1 is a part of FVC: in no manoeuvre can it be larger. */
import { toDecimals } from "../../kernel/rounding.js";
import type { Rule } from "../../kernel/rule.js";

export const rule: Rule = {
  id: "spirometry-parts",
  revision: 1,
  title: "FEV1 within FVC",
  section: "lungs",
  source: {
    authors: "this project",
    year: null,
    title: "Plausibility of a forced manoeuvre",
    where: "by definition: FEV1 is the part of FVC that leaves in the first second",
    verified: "own",
  },
  judge: ({ visit }) =>
    (visit.session.lungs?.manoeuvres ?? []).flatMap((m, i) =>
      m.fev1_l <= m.fvc_l
        ? []
        : [
            {
              severity: "fatal" as const,
              found: `manoeuvre ${i + 1}: FEV1 ${toDecimals(m.fev1_l, 2)} L and FVC ${toDecimals(m.fvc_l, 2)} L`,
              limit: "FEV1 up to FVC",
              because: "The two were swapped or mistyped, and it cannot be told which other value is wrong too.",
              affects: ["fev1", "fvc", "fev1_fvc"] as const,
            },
          ],
    ),
};
