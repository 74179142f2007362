/**
 * YAML of the program read before, as JSON, by the SHA-256 of its text. In the source there is none: `npm run build` puts
 * the tables and the English words in the place of this file. YAML with another text is read when it is asked for, to the same.
 */
export const parsedYaml: Readonly<Record<string, string>> = {};
