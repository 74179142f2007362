/**
 * How long from saving a session file until the page of `waymark watch` has painted the new number: 20 edits of the
 * largest visit of the example, in Chromium. Run by: npm run bench:watch (after npm run build)
 */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { copyPractice } from "../cli/practice-copy.js";
import { watchPage } from "../cli/watched-page.js";

const VISIT = "clients/c-017/2026-03-02-baseline";
const EDITS = 20;

const copy = copyPractice(["c-017"]);
const path = join(copy.root, VISIT, "session.yaml");
const text = readFileSync(path, "utf8");
const watched = await watchPage(copy.root, VISIT);
const times: number[] = [];
try {
  for (let i = 1; i <= EDITS; i++) {
    const mass = (66 + i / 10).toFixed(1);
    const start = performance.now();
    writeFileSync(path, text.replace(/mass_kg: (\[[^\]]*\]|[\d.]+)/, `mass_kg: ${mass}`));
    await watched.painted(i);
    times.push(performance.now() - start);
    const shown = await watched.page.evaluate(`document.body.textContent.includes("${mass}")`);
    if (!shown) throw new Error(`the page does not show ${mass}`);
  }
} finally {
  await watched.close();
  copy.remove();
}
const sorted = [...times].sort((a, b) => a - b);
const at = (share: number) => Math.round(sorted[Math.min(EDITS - 1, Math.floor(share * EDITS))] ?? Number.NaN);
console.log(`edit to repaint over ${EDITS} edits: median ${at(0.5)} ms, fastest ${at(0)} ms, slowest ${at(1)} ms`);
