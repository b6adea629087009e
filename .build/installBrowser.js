import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { findBrowser } from "./findBrowser.js";

/**
 * Installs Debian's Chromium where that needs no question, as in a bare container.
 *
 * @returns {string} the browser's program file
 */
export function installBrowser() {
  const mayInstall = existsSync("/etc/debian_version") && process.getuid?.() === 0;
  if (mayInstall) {
    run("apt-get", "update");
    run("apt-get", "install", "-y", "--no-install-recommends", "chromium");
  }
  const found = findBrowser();
  if (found !== undefined) return found;
  throw new Error("The browser tests need Chrome, Chromium or Edge: install one, or name its program in CHROME_PATH.");
}

/** @type {(command: string, ...words: string[]) => void} */
function run(command, ...words) {
  spawnSync(command, words, { stdio: ["ignore", "ignore", "inherit"] });
}
