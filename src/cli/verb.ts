/** What a verb of the command line is: its help (one literal), its options, and what it does. */
import type { ParseArgsConfig } from "node:util";

/** 0 fine · 1 problems in the input · 2 wrong command line · 3 our bug · above 128 stopped by a signal, as shells count. */
export type ExitCode = 0 | 1 | 2 | 3 | 129 | 130 | 143;

export interface Io {
  readonly cwd: string;
  /** Data: what another program may read. */
  readonly out: (text: string) => void;
  /** Talk: progress, problems, hints. */
  readonly say: (text: string) => void;
  readonly terminal: boolean;
}

export interface Verb {
  readonly help: string;
  readonly options: NonNullable<ParseArgsConfig["options"]>;
  readonly run: (words: readonly string[], flags: Flags, io: Io) => Promise<ExitCode>;
}
export type Flags = Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;

/** The command line is wrong: exit code 2, with the sentence and a pointer to --help. */
export class WrongUse extends Error {}
