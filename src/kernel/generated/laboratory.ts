/* Made by npm run generate from schema/laboratory.schema.json. Do not edit. */

/**
 * To be described.
 */
export interface Laboratory {
  waymark: "laboratory 1";
  name: string;
  [k: string]: unknown;
}
