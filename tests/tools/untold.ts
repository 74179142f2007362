/** `npx tsx tests/tools/untold.ts de [src/plan …]`: sentences of the results file that a language cannot tell yet. */
import { wordsIn } from "../../src/cli/press.js";
import { speechOf } from "../../src/kernel/speech.js";
import { answers, fromYaml, literals, untoldIn } from "./recorded-sentences.js";

const [language = "de", ...places] = process.argv.slice(2);
const speech = speechOf(wordsIn("templates/words", language));
const untold = untoldIn(speech, [...literals(), ...fromYaml(), ...answers()]);
for (const { at, text } of untold)
  if (places.length === 0 || places.some((place) => at.startsWith(place))) console.log(`${at}\t${text}`);
