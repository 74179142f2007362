/** A worker thread: opens the shop once, then builds or verifies the clients it is sent. */
import { parentPort, workerData } from "node:worker_threads";
import type { Answer, Task } from "./crew.js";
import { Unreadable } from "./files.js";
import type { Practice } from "./practice.js";
import { openShop, type ShopWish } from "./shop.js";

const { practice, wish } = workerData as { practice: Practice; wish: ShopWish };
const say = (answer: Answer) => parentPort?.postMessage(answer);
/** The user's disk or file keeps its words on the way to the main thread; everything else is a fault of the program. */
const said = (error: unknown): Answer =>
  error instanceof Unreadable
    ? { unreadable: { path: error.path, found: error.found, fix: error.fix } }
    : { fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
const shop = openShop(practice, wish);
shop.then(
  ({ diagnostics }) => say({ opened: diagnostics }),
  (error: unknown) => say(said(error)),
);

parentPort?.on("message", async ({ job, client, visits }: Task) => {
  try {
    say({ done: await (await shop)[job](client, new Set(visits)) });
  } catch (error) {
    say(said(error));
  }
});
