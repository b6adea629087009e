import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/**
 * The build's version: package.json's, and eight digits that change with any source file. So functions and pane, which
 * Office may keep for different times, can tell whether they belong together.
 *
 * @param {string} folder the project's
 * @returns {string} "0.1.0+3fa9c2d1"
 */
export function version(folder) {
  const { version: released } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const hash = createHash("sha256");
  const names = readdirSync(join(folder, "src"), { recursive: true, encoding: "utf8" }).sort();
  const files = names.map((name) => join(folder, "src", name)).filter((file) => statSync(file).isFile());
  for (const file of files) hash.update(readFileSync(file));
  return `${released}+${hash.digest("hex").slice(0, 8)}`;
}
