/** Whether the plan may go to the client: reviewed and signed for this very visit. */
import type { Plan } from "../kernel/generated/client.js";
import type { Notebook } from "../kernel/notebook.js";
import type { LaidWeek } from "./weeks/lay-out.js";

export function writeState(book: Notebook, plan: Plan, visitDate: string, laid: readonly LaidWeek[]): void {
  const signature = (plan.signed ?? []).find((one) => one.for_visit === visitDate);
  const weeks = `${laid.length} week${laid.length === 1 ? "" : "s"}`;
  if (signature === undefined) {
    book.judge(
      "programme_state",
      "not printed",
      `The plan of ${weeks} is laid out for review. It is not in the client's edition: nobody has signed it for the visit of ${visitDate} (plan.signed in client.yaml).`,
    );
    return;
  }
  if (signature.date < visitDate) {
    book.judge(
      "programme_state",
      "not printed",
      `The signature is dated ${signature.date}, before the visit it stands for: sign again.`,
    );
    return;
  }
  book.judge(
    "programme_state",
    "ready",
    `Reviewed and signed by the ${signature.by_role} on ${signature.date}: ${weeks} up to the goal. It is a proposal that follows the next test, and promises nothing.`,
  );
}
