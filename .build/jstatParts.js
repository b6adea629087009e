import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** jstat's own source files that its special functions need, in the order in which it joins them itself. */
const parts = ["core", "special"];

/**
 * A webpack loader that takes jstat's special functions alone in place of the whole library, which is one file of many
 * more parts (matrices, distributions, regression, tests) that cannot be shaken off otherwise.
 *
 * @this {import("webpack").LoaderContext<object>}
 */
export default function jstatParts() {
  const files = parts.map((part) => join(dirname(this.resourcePath), "../src", `${part}.js`));
  for (const file of files) this.addDependency(file);
  return `${files.map((file) => readFileSync(file, "utf8")).join("\n")}\nmodule.exports = jStat;\n`;
}
