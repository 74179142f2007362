/**
 * Who builds clients: this thread for a few, worker threads for many. Either way one client at a time each, handed out
 * as someone becomes free; results come back small, since pages lie on the disk by then.
 */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { ClientBuilt } from "./build-client.js";
import type { ClientFolder, Practice } from "./practice.js";
import { openShop, type ShopWish } from "./shop.js";

export interface Crew {
  build(client: ClientFolder, stale: ReadonlySet<string>): Promise<ClientBuilt>;
  /** Faults of what the laboratory adds: retests and tables. */
  diagnostics(): Promise<readonly Diagnostic[]>;
  /** How many clients can be in work at once. */
  readonly size: number;
  close(): Promise<void>;
}

/** Fewer visits than this are done before a second thread has loaded the program. */
const WORTH_A_THREAD = 12;

export async function openCrew(practice: Practice, wish: ShopWish, visits: number): Promise<Crew> {
  const size = Math.min(availableParallelism(), Math.floor(visits / WORTH_A_THREAD));
  if (size < 2) {
    const shop = await openShop(practice, wish);
    return { size: 1, build: shop.build, diagnostics: async () => shop.diagnostics, close: async () => undefined };
  }
  return threads(practice.root, wish, size);
}

export interface Task {
  readonly client: ClientFolder;
  readonly stale: readonly string[];
}
export type Answer =
  | { readonly opened: readonly Diagnostic[] }
  | { readonly built: ClientBuilt }
  | { readonly fault: string };

interface Hand {
  readonly worker: Worker;
  readonly opened: Promise<readonly Diagnostic[]>;
  /** Settles the task in work. */
  settle: { resolve: (built: ClientBuilt) => void; reject: (error: Error) => void } | undefined;
}

function threads(root: string, wish: ShopWish, size: number): Crew {
  const hands = Array.from({ length: size }, () => startHand(root, wish));
  const idle = [...hands];
  const waiting: ((hand: Hand) => void)[] = [];
  const free = (hand: Hand) => {
    const next = waiting.shift();
    if (next) next(hand);
    else idle.push(hand);
  };
  return {
    size,
    diagnostics: () => (hands[0] as Hand).opened,
    async build(client, stale) {
      const hand = idle.pop() ?? (await new Promise<Hand>((resolve) => waiting.push(resolve)));
      try {
        return await new Promise<ClientBuilt>((resolve, reject) => {
          hand.settle = { resolve, reject };
          hand.worker.postMessage({
            client,
            stale: client.visits.map((v) => v.path).filter((path) => stale.has(path)),
          } satisfies Task);
        });
      } finally {
        hand.settle = undefined;
        free(hand);
      }
    },
    async close() {
      await Promise.all(hands.map((hand) => hand.worker.terminate()));
    },
  };
}

function startHand(root: string, wish: ShopWish): Hand {
  const worker = new Worker(new URL("./crew-worker.js", import.meta.url), {
    workerData: { root, wish },
    // Computing makes much that is soon thrown away: room for it saves a fifth of the time.
    resourceLimits: { maxYoungGenerationSizeMb: 64 },
  });
  let isOpen: (diagnostics: readonly Diagnostic[]) => void = () => undefined;
  let cannotOpen: (error: Error) => void = () => undefined;
  const opened = new Promise<readonly Diagnostic[]>((resolve, reject) => {
    isOpen = resolve;
    cannotOpen = reject;
  });
  opened.catch(() => undefined); // reported by whoever asks
  const hand: Hand = { worker, opened, settle: undefined };
  const fail = (error: Error) => {
    cannotOpen(error);
    hand.settle?.reject(error);
  };
  worker.on("message", (answer: Answer) => {
    if ("opened" in answer) isOpen(answer.opened);
    else if ("built" in answer) hand.settle?.resolve(answer.built);
    else fail(new Error(answer.fault));
  });
  worker.on("error", fail);
  worker.on("exit", (code) => fail(new Error(`a worker thread ended (code ${code})`)));
  return hand;
}
