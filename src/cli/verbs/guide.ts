import { nearest } from "../../kernel/near.js";
import { type Block, type GuideNode, guideBlocks, guideList, guidePage, type SchemaOf } from "../guide.js";
import { loadSchemas } from "../reference.js";
import { type Verb, WrongUse } from "../verb.js";

const HELP = `waymark guide              list the blocks of a session file, and the other files of a practice
waymark guide BLOCK        the keys of a block: units, ranges, how to measure, sources
waymark guide BLOCK.KEY    one key of it, such as blood_pressure.readings

Reads the schemas that check uses, so the guide and the check cannot disagree. Needs no practice.
`;

const BASE = "https://waymark.invalid/schema/";

export const verb: Verb = {
  help: HELP,
  options: {},
  async run(words, _flags, io) {
    if (words.length > 1) throw new WrongUse("guide takes one block, such as: waymark guide size");
    const schemas = new Map(loadSchemas().map((schema) => [String(schema.$id).replace(BASE, ""), schema]));
    const schemaOf: SchemaOf = (name) => schemas.get(name) as GuideNode | undefined;
    const blocks = guideBlocks(schemaOf);
    const [asked] = words;
    if (asked === undefined) {
      io.out(`${guideList(blocks)}\n\nwaymark guide BLOCK tells the rest.\n`);
      return 0;
    }
    const [name = "", ...path] = asked.split(".");
    const block = blocks.find((b) => b.name === name) ?? blocks.find((b) => b.name === name.replaceAll("-", "_"));
    if (block === undefined) throw new WrongUse(unknownBlock(name, blocks));
    const page = guidePage(block, path, schemaOf);
    if (page === undefined)
      throw new WrongUse(`${block.name} has no key ${path.join(".")}; waymark guide ${block.name} lists its keys`);
    io.out(`${page}\n`);
    return 0;
  },
};

function unknownBlock(name: string, blocks: readonly Block[]): string {
  const names = blocks.map((block) => block.name);
  const near = nearest(name, names);
  return `there is no block ${name}; ${near ? `did you mean ${near}?` : `there are ${names.join(", ")}`}`;
}
