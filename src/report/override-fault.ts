/** A fault in a file with which a practice changes its reports. */

export interface OverrideFile {
  /** "report/partials/note.hbs" */
  readonly path: string;
  readonly text: string;
}

export class OverrideFault extends Error {
  constructor(
    readonly path: string,
    readonly line: number | undefined,
    readonly found: string,
    readonly fix: string,
  ) {
    super(`${path}${line === undefined ? "" : `:${line}`}: ${found}. ${fix}`);
    this.name = "OverrideFault";
  }
}
