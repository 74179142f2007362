/** Everything one thread needs to build or verify clients, opened once: laboratory, reference, and the press when reports are wanted. */
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { Laboratory } from "../kernel/generated/laboratory.js";
import type { Edition } from "../report/render.js";
import { buildClient, type ClientBuilt } from "./build-client.js";
import { readDocument } from "./check-practice.js";
import type { ClientFolder, Practice } from "./practice.js";
import { openReference } from "./reference.js";
import { type ClientVerified, verifyClient } from "./verify-client.js";

export interface ShopWish {
  /** Empty for results only. */
  readonly editions: readonly Edition[];
}
export interface Shop {
  /** Faults of what the laboratory adds: retests and tables. */
  readonly diagnostics: readonly Diagnostic[];
  build(client: ClientFolder, stale: ReadonlySet<string>): Promise<ClientBuilt>;
  verify(client: ClientFolder, chosen: ReadonlySet<string>): Promise<ClientVerified>;
}

export async function openShop(practice: Practice, { editions }: ShopWish): Promise<Shop> {
  const lab = readDocument(practice.root, "lab.yaml");
  const { reference, diagnostics } = await openReference(practice, lab);
  const workshop = { practice, lab, reference };
  const press =
    editions.length === 0
      ? undefined
      : { open: (await import("./press.js")).openPress(practice, workshop.reference), editions };
  // A fault in what the practice changes of its reports is told before anything is computed or written.
  press?.open.prepare((lab.value as Partial<Laboratory> | undefined)?.language);
  return {
    diagnostics,
    build: (client, stale) => buildClient(workshop, client, stale, press),
    verify: async (client, chosen) => verifyClient(workshop, client, chosen),
  };
}
