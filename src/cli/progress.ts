/** Progress on a terminal, for work that lasts longer than a second: one line that is rewritten, then removed. */
import type { Io } from "./verb.js";

export interface Progress {
  /** One more thing is done; `name` is what comes now. */
  step(name: string): void;
  end(): void;
}

/** `now` is a clock in ms, given so that tests need not wait. */
export function openProgress(total: number, io: Io, now: () => number): Progress {
  const start = now();
  let done = 0;
  let drawn = 0;
  return {
    step(name) {
      done++;
      const elapsed = now() - start;
      if (!io.terminal || elapsed < 1000 || now() - drawn < 100) return;
      drawn = now();
      const left = Math.ceil(((elapsed / done) * (total - done)) / 1000);
      io.say(`\r\u001b[2K${done} of ${total}  ${name}  about ${left} s left`);
    },
    end() {
      if (drawn > 0) io.say("\r\u001b[2K");
    },
  };
}
