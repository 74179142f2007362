/**
 * Who builds or verifies clients: this thread for a few, worker threads for many. Either way one client at a time each,
 * handed out as someone becomes free; results come back small, since pages lie on the disk by then. A thread that dies is
 * replaced and its client tried once more: a visit is written whole or not at all, so trying again is safe.
 */
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Diagnostic } from "../kernel/diagnostic.js";
import type { ClientBuilt } from "./build-client.js";
import { Unreadable } from "./files.js";
import type { ClientFolder, Practice } from "./practice.js";
import { openShop, type Shop, type ShopWish } from "./shop.js";
import type { ClientVerified } from "./verify-client.js";

export interface Crew extends Pick<Shop, "build" | "verify"> {
  /** Faults of what the laboratory adds: retests and tables. */
  diagnostics(): Promise<readonly Diagnostic[]>;
  /** How many clients can be in work at once. */
  readonly size: number;
  close(): Promise<void>;
}

/** Fewer visits than this are done before a second thread has loaded the program. */
const WORTH_A_THREAD = 12;

/** `printing`: this thread has a browser to start and to feed meanwhile, so that even one visit goes to another. */
export async function openCrew(practice: Practice, wish: ShopWish, visits: number, printing = false): Promise<Crew> {
  const size = Math.min(availableParallelism(), Math.floor(visits / WORTH_A_THREAD));
  if (size < 2 && !printing) {
    const shop = await openShop(practice, wish);
    return { ...shop, size: 1, diagnostics: async () => shop.diagnostics, close: async () => undefined };
  }
  return threads((roomy) => startHand(practice, wish, roomy), Math.max(size, 1));
}

export interface Task {
  readonly job: "build" | "verify";
  readonly client: ClientFolder;
  /** Paths of the visits that are meant. */
  readonly visits: readonly string[];
}
/** What a task gives: ClientBuilt or ClientVerified, as its job says. */
export type Done = ClientBuilt | ClientVerified;
export type Answer =
  | { readonly opened: readonly Diagnostic[] }
  | { readonly done: Done }
  | { readonly unreadable: { readonly path: string; readonly found: string; readonly fix: string } }
  | { readonly fault: string };

/** A worker thread that is gone, whatever ended it. */
class HandLost extends Error {}

export interface Hand {
  readonly opened: Promise<readonly Diagnostic[]>;
  work(task: Task): Promise<Done>;
  end(): Promise<unknown>;
}

/** Hands are started by `start`; each works on one client at a time. One that replaces another gets all the memory there is. */
export function threads(start: (roomy: boolean) => Hand, size: number): Crew {
  const hands = new Set(Array.from({ length: size }, () => start(false)));
  const first = [...hands][0] as Hand;
  const idle = [...hands];
  const waiting: ((hand: Hand) => void)[] = [];
  let closed = false;
  const free = (hand: Hand) => {
    const next = waiting.shift();
    if (next) next(hand);
    else idle.push(hand);
  };
  const attempt = async (task: Task): Promise<Done> => {
    const hand = idle.pop() ?? (await new Promise<Hand>((resolve) => waiting.push(resolve)));
    let next = hand;
    try {
      return await hand.work(task);
    } catch (error) {
      if (error instanceof HandLost && !closed) {
        hands.delete(hand);
        next = start(true);
        hands.add(next);
      }
      throw error;
    } finally {
      free(next);
    }
  };
  const handOut = async (job: Task["job"], client: ClientFolder, meant: ReadonlySet<string>): Promise<Done> => {
    const task = { job, client, visits: client.visits.map((v) => v.path).filter((path) => meant.has(path)) };
    try {
      return await attempt(task);
    } catch (error) {
      if (!(error instanceof HandLost) || closed) throw error;
      return await attempt(task);
    }
  };
  return {
    size,
    diagnostics: () => first.opened,
    build: (client, stale) => handOut("build", client, stale) as Promise<ClientBuilt>,
    verify: (client, chosen) => handOut("verify", client, chosen) as Promise<ClientVerified>,
    async close() {
      closed = true;
      await Promise.all([...hands].map((hand) => hand.end()));
    },
  };
}

function startHand(practice: Practice, wish: ShopWish, roomy: boolean): Hand {
  const worker = new Worker(new URL("../cli/crew-worker.js", import.meta.url), {
    workerData: { practice, wish },
    // Ninety megabytes live in a thread that draws; without a limit it would sweep only at several times that.
    ...(roomy ? {} : { resourceLimits: { maxYoungGenerationSizeMb: 32, maxOldGenerationSizeMb: 200 } }),
  });
  let isOpen: (diagnostics: readonly Diagnostic[]) => void = () => undefined;
  let cannotOpen: (error: Error) => void = () => undefined;
  const opened = new Promise<readonly Diagnostic[]>((resolve, reject) => {
    isOpen = resolve;
    cannotOpen = reject;
  });
  opened.catch(() => undefined); // reported by whoever asks
  let inWork: { resolve: (done: Done) => void; reject: (error: Error) => void } | undefined;
  let lost: Error | undefined;
  const fail = (error: Error) => {
    cannotOpen(error);
    inWork?.reject(error);
  };
  const lose = (reason: string) => {
    lost = new HandLost(reason);
    fail(lost);
  };
  worker.on("message", (answer: Answer) => {
    if ("opened" in answer) isOpen(answer.opened);
    else if ("done" in answer) inWork?.resolve(answer.done);
    else if ("unreadable" in answer)
      fail(new Unreadable(answer.unreadable.path, answer.unreadable.found, answer.unreadable.fix));
    else fail(new Error(answer.fault));
  });
  worker.on("error", (error) => lose(`a worker thread failed: ${error.message}`));
  worker.on("exit", (code) => lose(`a worker thread ended (code ${code})`));
  return {
    opened,
    async work(task) {
      if (lost) throw lost;
      try {
        return await new Promise<Done>((resolve, reject) => {
          inWork = { resolve, reject };
          worker.postMessage(task);
        });
      } finally {
        inWork = undefined;
      }
    },
    end: () => worker.terminate(),
  };
}
