import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { findOffice } from "./findOffice.js";

/**
 * Installs Debian's LibreOffice Calc where that needs no question, as in a bare container.
 *
 * @returns {string} LibreOffice's program file
 */
export function installOffice() {
  const mayInstall = existsSync("/etc/debian_version") && process.getuid?.() === 0;
  if (mayInstall) {
    run("apt-get", "update");
    run("apt-get", "install", "-y", "--no-install-recommends", "libreoffice-calc");
  }
  const found = findOffice();
  if (found !== undefined) return found;
  throw new Error("The tests of workbook files need LibreOffice: install it, or name its program in OFFICE_PATH.");
}

/** @type {(command: string, ...words: string[]) => void} */
function run(command, ...words) {
  spawnSync(command, words, { stdio: ["ignore", "ignore", "inherit"] });
}
