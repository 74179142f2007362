/** A worker thread of a build: opens the shop once, then builds the clients it is sent. */
import { parentPort, workerData } from "node:worker_threads";
import type { Answer, Task } from "./crew.js";
import { openPractice } from "./practice.js";
import { openShop, type ShopWish } from "./shop.js";

const { root, wish } = workerData as { root: string; wish: ShopWish };
const shop = openShop(openPractice(root), wish);

parentPort?.on("message", async ({ client, stale }: Task) => {
  let answer: Answer;
  try {
    answer = { built: await (await shop).build(client, new Set(stale)) };
  } catch (error) {
    answer = { fault: error instanceof Error ? (error.stack ?? error.message) : String(error) };
  }
  parentPort?.postMessage(answer);
});
