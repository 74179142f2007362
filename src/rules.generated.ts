/* Made by npm run generate from the modules. Do not edit. */
import type { Rule } from "./kernel/rule.js";

export const rules: readonly Rule[] = [];
