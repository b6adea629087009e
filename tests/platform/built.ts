import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * @param path of a built file within dist
 * @returns its text
 */
export function built(path: string): string {
  const file = join("dist", path);
  if (!existsSync(file)) throw new Error(`${file} is missing: run npm run build`);
  return readFileSync(file, "utf8");
}
