/**
 * Marks of a section's side notes: remarks that weaken a value, small definitions and sources of references. A text that
 * belongs to several values is printed once, and all of them carry its mark.
 */
import type { NoteView } from "./types.js";

export interface Note {
  readonly title?: string;
  readonly text: string;
  readonly weakens?: boolean;
}
export interface Notes {
  /** The mark of a note; the same text always gives the same mark. */
  mark(note: Note): string;
  list(): readonly NoteView[];
}

const LETTERS = 26;

export function openNotes(language: string): Notes {
  const notes = new Map<string, NoteView>();
  return {
    mark({ title = "", text, weakens = false }) {
      const known = notes.get(`${title} ${text}`);
      if (known) return known.mark;
      const mark = letter(notes.size);
      notes.set(`${title} ${text}`, { mark, title, hasTitle: title !== "", text, language, weakens });
      return mark;
    },
    list: () => [...notes.values()],
  };
}

/** 0 → a, 25 → z, 26 → aa. */
const letter = (at: number): string =>
  (at < LETTERS ? "" : letter(Math.floor(at / LETTERS) - 1)) + String.fromCharCode(97 + (at % LETTERS));
