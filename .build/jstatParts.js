import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/**
 * A webpack loader that takes jstat's special functions alone in place of the whole library, which is one file of many
 * more parts (matrices, distributions, regression, tests) that cannot be shaken off otherwise. They hang themselves on
 * an object named jStat; of the library's core they need no more than its `fn`, where they put what nobody here calls.
 *
 * @this {import("webpack").LoaderContext<object>}
 */
export default function jstatParts() {
  const special = join(dirname(this.resourcePath), "../src/special.js");
  this.addDependency(special);
  return `const jStat = { fn: {} };\n${readFileSync(special, "utf8")}\nmodule.exports = jStat;\n`;
}
