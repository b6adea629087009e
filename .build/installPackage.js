import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/**
 * Installs a package of Debian's where that needs no question, as in a bare container; elsewhere nothing happens.
 *
 * @param {string} name
 */
export function installPackage(name) {
  if (!existsSync("/etc/debian_version") || process.getuid?.() !== 0) return;
  run("apt-get", "update");
  run("apt-get", "install", "-y", "--no-install-recommends", name);
}

/** @type {(command: string, ...words: string[]) => void} */
function run(command, ...words) {
  spawnSync(command, words, { stdio: ["ignore", "ignore", "inherit"] });
}
