/**
 * Loaded before the program by `npm run build`: when the program ends, what V8 compiled for each of its parts is written
 * beside it, functions that ran included. Code kept by an earlier run stays.
 */
const { createHash } = require("node:crypto");
const { existsSync, readFileSync, writeFileSync } = require("node:fs");
const v8 = require("node:v8");
const vm = require("node:vm");

const scripts = new Map();
vm.Script = class extends vm.Script {
  constructor(source, options) {
    super(source, options);
    scripts.set(options.filename, this);
  }
};
// Functions that have not run for a while would be let go; the flags V8 compares must be as usual when code is made.
v8.setFlagsFromString("--no-flush-bytecode");
process.on("exit", () => {
  v8.setFlagsFromString("--flush-bytecode");
  for (const [file, script] of scripts) {
    if (existsSync(`${file}.code`)) continue;
    const code = script.createCachedData();
    const digest = createHash("sha256").update(readFileSync(file)).update(code).digest();
    writeFileSync(`${file}.code`, Buffer.concat([digest, code]));
  }
});
