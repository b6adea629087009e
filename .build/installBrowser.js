import { findBrowser } from "./findBrowser.js";
import { installPackage } from "./installPackage.js";

/**
 * Installs Debian's Chromium where that needs no question.
 *
 * @returns {string} the browser's program file
 */
export function installBrowser() {
  installPackage("chromium");
  const found = findBrowser();
  if (found !== undefined) return found;
  throw new Error("The browser tests need Chrome, Chromium or Edge: install one, or name its program in CHROME_PATH.");
}
