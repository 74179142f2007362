/** Figures drawn once and asked for again: the same structure and data give the same SVG. */
import type { SvgDrawer } from "./svg.js";

/** Figures kept at once: the reports of a few visits. */
const KEPT = 200;

export function remembering(drawer: SvgDrawer): SvgDrawer {
  const kept = new Map<string, Promise<string>>();
  return {
    draw(figure, marks) {
      const key = JSON.stringify([figure, marks]);
      const drawn = kept.get(key) ?? drawer.draw(figure, marks);
      kept.delete(key);
      kept.set(key, drawn);
      drawn.catch(() => kept.delete(key));
      const oldest = kept.keys().next().value;
      if (kept.size > KEPT && oldest !== undefined) kept.delete(oldest);
      return drawn;
    },
  };
}
