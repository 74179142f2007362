/* Made by npm run generate from schema/client.schema.json. Do not edit. */

/**
 * To be described.
 */
export interface Client {
  waymark: "client 1";
  id: string;
  birth_date: string;
  sex: "female" | "male";
  [k: string]: unknown;
}
