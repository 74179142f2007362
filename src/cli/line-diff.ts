/**
 * A unified diff between two texts that differ in few lines, with three lines around each change. Lines that stand at
 * the same place in both are compared; where lines were added or removed, what differs is one block.
 */
const AROUND = 3;

interface Block {
  /** 0-based, end excluded. */
  readonly old: readonly [number, number];
  readonly now: readonly [number, number];
}

export function unifiedDiff(file: string, before: string, after: string): string {
  if (before === after) return "";
  const old = linesOf(before);
  const now = linesOf(after);
  const blocks = old.length === now.length ? linewise(old, now) : oneBlock(old, now);
  return [`--- ${file}`, `+++ ${file}`, ...hunks(blocks).map((hunk) => hunkText(hunk, old, now))].join("\n");
}

/** The empty text behind the last line end is no line of its own. */
const linesOf = (text: string) => text.replace(/\n$/, "").split("\n");

function linewise(old: readonly string[], now: readonly string[]): Block[] {
  const blocks: Block[] = [];
  for (let i = 0; i < old.length; i++) {
    if (old[i] === now[i]) continue;
    const last = blocks.at(-1);
    if (last?.old[1] === i) blocks[blocks.length - 1] = { old: [last.old[0], i + 1], now: [last.now[0], i + 1] };
    else blocks.push({ old: [i, i + 1], now: [i, i + 1] });
  }
  return blocks;
}

function oneBlock(old: readonly string[], now: readonly string[]): Block[] {
  let start = 0;
  while (start < old.length && start < now.length && old[start] === now[start]) start++;
  let end = 0;
  while (end < old.length - start && end < now.length - start && old.at(-1 - end) === now.at(-1 - end)) end++;
  return [{ old: [start, old.length - end], now: [start, now.length - end] }];
}

/** Blocks whose surroundings touch stand in one hunk. */
function hunks(blocks: readonly Block[]): Block[][] {
  const groups: Block[][] = [];
  for (const block of blocks) {
    const last = groups.at(-1);
    const before = last?.at(-1)?.old[1];
    if (last !== undefined && before !== undefined && block.old[0] - before <= 2 * AROUND) last.push(block);
    else groups.push([block]);
  }
  return groups;
}

function hunkText(blocks: readonly Block[], old: readonly string[], now: readonly string[]): string {
  const [first, last] = [blocks[0] as Block, blocks.at(-1) as Block];
  const from = Math.max(0, first.old[0] - AROUND);
  const to = Math.min(old.length, last.old[1] + AROUND);
  const lines: string[] = [];
  let at = from;
  let added = 0;
  for (const block of blocks) {
    for (; at < block.old[0]; at++) lines.push(` ${old[at]}`);
    for (; at < block.old[1]; at++) lines.push(`-${old[at]}`);
    for (let n = block.now[0]; n < block.now[1]; n++) lines.push(`+${now[n]}`);
    added += block.now[1] - block.now[0] - (block.old[1] - block.old[0]);
  }
  for (; at < to; at++) lines.push(` ${old[at]}`);
  const start = from + 1 + (first.now[0] - first.old[0]);
  return [`@@ -${from + 1},${to - from} +${start},${to - from + added} @@`, ...lines].join("\n");
}
