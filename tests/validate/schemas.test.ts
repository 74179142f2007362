/** The schemas themselves: they compile strictly, explain every key, and their ranges make sense. */
import { describe, expect, it } from "vitest";
import { ANNOTATIONS } from "../../src/validate/checker.js";
import { schemas } from "./practice-tree.js";

type Node = Readonly<Record<string, unknown>>;

/** Every schema node below properties, items and $defs, with its way there. */
function* nodes(node: Node, way: string): Generator<[string, Node]> {
  yield [way, node];
  for (const group of ["properties", "$defs", "patternProperties"])
    for (const [key, inner] of Object.entries((node[group] ?? {}) as Record<string, Node>))
      yield* nodes(inner, `${way}.${key}`);
  for (const key of ["items", "additionalProperties"])
    if (typeof node[key] === "object" && node[key] !== null) yield* nodes(node[key] as Node, `${way}.${key}`);
}
const all = schemas.map((schema) => [String(schema.$id).split("/schema/")[1] ?? "", schema] as const);

describe("schemas", () => {
  it("compile strictly, each by itself", async () => {
    const { Ajv2020 } = await import("ajv/dist/2020.js");
    const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false, allowUnionTypes: true });
    for (const keyword of [...ANNOTATIONS, "usual"]) ajv.addKeyword({ keyword, valid: true });
    for (const format of ["date", "time", "date-time"]) ajv.addFormat(format, true);
    for (const schema of schemas) ajv.addSchema(schema, String(schema.$id));
    for (const schema of schemas) expect(() => ajv.getSchema(String(schema.$id)), String(schema.$id)).not.toThrow();
  });

  for (const [name, schema] of all)
    it(`${name} explains every key`, () => {
      const silent: string[] = [];
      for (const [way, node] of nodes(schema, ""))
        for (const [key, inner] of Object.entries((node.properties ?? {}) as Record<string, Node>))
          if (!inner.$ref && !(typeof inner.description === "string" && inner.description.length > 5))
            silent.push(`${way}.${key}`);
      expect(silent).toEqual([]);
      expect(String(schema.description)).not.toBe("To be described.");
    });

  it("have usual ranges inside possible ones, and slips that lead from outside to inside", () => {
    const wrong: string[] = [];
    for (const [name, schema] of all)
      for (const [way, node] of nodes(schema, name)) {
        const { minimum, maximum, usual } = node as { minimum?: number; maximum?: number; usual?: [number, number] };
        if (minimum !== undefined && maximum !== undefined && minimum >= maximum) wrong.push(way);
        if (usual && (usual[0] >= usual[1] || usual[0] < (minimum ?? -Infinity) || usual[1] > (maximum ?? Infinity)))
          wrong.push(way);
        for (const slip of (node.slips ?? []) as { factor: number; looks: string }[])
          if (!(slip.factor > 0) || slip.looks.length < 1) wrong.push(way);
      }
    expect(wrong).toEqual([]);
  });
});
