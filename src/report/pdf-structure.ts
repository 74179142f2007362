/**
 * The structure tree of a printed PDF, with less paper: attributes that say the default are left out, and an element that
 * only wraps one piece of marked content gives that piece to its parent. What a screen reader is told stays the same.
 */

const ELEMENT = "<</Type /StructElem";
const WRAPS = `${ELEMENT}\n/S /NonStruct\n`;
const WRAPPER = /^<<\/Type \/StructElem\s+\/S \/NonStruct\s+\/P (\d+) 0 R\s+\/Pg (\d+ 0 R)\s+\/K (\d+)>>$/;
const ONLY_CHILD = /\/K (\d+) 0 R(?=\s*(?:\/|>>))/;
const DEFAULTS = / ?<<\/O \/Table\s\/(?:Row|Col)Span 1>>/g;
const NOTHING = "\n/A []";

export function slimStructure(objects: ReadonlyMap<number, string>): Map<number, string> {
  const slim = new Map(objects);
  for (const [number, content] of objects)
    if (content.startsWith(ELEMENT) && content.includes("/A ["))
      slim.set(number, content.replace(DEFAULTS, "").replace(NOTHING, ""));
  const moved = new Map<string, string>();
  for (const [number, content] of objects) {
    const wrapper = content.startsWith(WRAPS) ? WRAPPER.exec(content) : null;
    if (wrapper === null) continue;
    const parent = Number(wrapper[1]);
    const above = slim.get(parent);
    if (!above?.startsWith(ELEMENT)) continue;
    // Only where the wrapper is all the parent holds, and the parent names no page of its own.
    if (!above.includes(`/K ${number} 0 R`) || above.includes("/Pg ")) continue;
    slim.set(parent, above.replace(ONLY_CHILD, `/Pg ${wrapper[2]} /K ${wrapper[3]}`));
    slim.delete(number);
    moved.set(`${number} 0 R`, `${parent} 0 R`);
  }
  // The parent tree, arrays of references, follows.
  for (const [number, content] of slim)
    if (content.startsWith("["))
      slim.set(
        number,
        content.replace(/\d+ 0 R/g, (ref) => final(ref, moved)),
      );
  return slim;
}

function final(ref: string, moved: ReadonlyMap<string, string>): string {
  let at = ref;
  for (let next = moved.get(at); next !== undefined; next = moved.get(at)) at = next;
  return at;
}
