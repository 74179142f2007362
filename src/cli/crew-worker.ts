/** A worker thread of a build: opens the shop once, then builds the clients it is sent. */
import { parentPort, workerData } from "node:worker_threads";
import type { Answer, Task } from "./crew.js";
import { openPractice } from "./practice.js";
import { openShop, type ShopWish } from "./shop.js";

const { root, wish } = workerData as { root: string; wish: ShopWish };
const say = (answer: Answer) => parentPort?.postMessage(answer);
const words = (error: unknown) => (error instanceof Error ? (error.stack ?? error.message) : String(error));
const shop = openShop(openPractice(root), wish);
shop.then(
  ({ diagnostics }) => say({ opened: diagnostics }),
  (error: unknown) => say({ fault: words(error) }),
);

parentPort?.on("message", async ({ client, stale }: Task) => {
  try {
    say({ built: await (await shop).build(client, new Set(stale)) });
  } catch (error) {
    say({ fault: words(error) });
  }
});
