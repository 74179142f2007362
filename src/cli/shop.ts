/** Everything one thread needs to build clients, opened once: laboratory, reference, and the press when reports are wanted. */
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { Edition } from "../report/render.js";
import { buildClient, type ClientBuilt } from "./build-client.js";
import { readDocument } from "./check-practice.js";
import type { ClientFolder, Practice } from "./practice.js";
import { laboratoryRetests, loadReference } from "./reference.js";

export interface ShopWish {
  /** Empty for results only. */
  readonly editions: readonly Edition[];
}
export interface Shop {
  build(client: ClientFolder, stale: ReadonlySet<string>): Promise<ClientBuilt>;
}

export async function openShop(practice: Practice, { editions }: ShopWish): Promise<Shop> {
  const lab = readDocument(practice.root, "lab.yaml");
  const retests = laboratoryRetests(practice, (lab.value ?? {}) as Laboratory);
  const workshop = { practice, lab, reference: await loadReference(retests.sets) };
  const press =
    editions.length === 0
      ? undefined
      : { open: (await import("./press.js")).openPress(practice, workshop.reference), editions };
  return { build: (client, stale) => buildClient(workshop, client, stale, press) };
}
