/**
 * Ctrl-C, or a polite request to end: the clients in work are finished, what is done is noted, and the next build goes
 * on from there. A second Ctrl-C ends at once; files are still whole, because each is written beside and renamed.
 */
import type { ExitCode, Io } from "./verb.js";

export interface Stop {
  readonly asked: () => boolean;
  readonly code: () => ExitCode;
  close(): void;
}

const SIGNALS = { SIGINT: 130, SIGTERM: 143, SIGHUP: 129 } as const;

/** Listens until closed; `release` gives the lock back where there is no time for anything else. */
export function openStop(io: Pick<Io, "say">, release: () => void): Stop {
  let code: ExitCode = 0;
  const onSignal = (signal: NodeJS.Signals) => {
    const asked = SIGNALS[signal as keyof typeof SIGNALS];
    if (code !== 0) {
      release();
      process.exit(asked);
    }
    code = asked;
    io.say("\nStopping after the clients in work; what is built stays. Once more to stop at once.\n");
  };
  for (const signal of Object.keys(SIGNALS)) process.on(signal as NodeJS.Signals, onSignal);
  return {
    asked: () => code !== 0,
    code: () => code,
    close() {
      for (const signal of Object.keys(SIGNALS)) process.removeListener(signal as NodeJS.Signals, onSignal);
    },
  };
}
