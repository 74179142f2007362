/** How a domain feels, for a day without a watch. */
import type { Word } from "./domains.js";

/** Talk: a habit of coaches, without a source of its own. */
export const TALK: Readonly<Record<Word, string>> = {
  easy: "whole sentences, comfortably",
  steady: "short sentences",
  hard: "single words",
  "steady to hard": "short sentences, then single words",
};
/** Classes of perceived exertion, 6 to 20 (Garber 2011): used where the client gave no rating at the threshold. */
export const RATING: Readonly<Record<Word, string>> = {
  easy: "9 to 13",
  steady: "14 to 17",
  hard: "18 to 20",
  "steady to hard": "14 to 20",
};
/** Rating of a whole session, 0 to 10, that a planned load is reckoned with; a convention of this program. */
export const SESSION_RATING = {
  easy: 3,
  long: 3,
  "loaded walk": 4,
  steady: 5,
  intervals: 7,
  strength: 5,
} as const;
