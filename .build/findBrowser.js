import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const commands = [
  "google-chrome",
  "google-chrome-stable",
  "chromium",
  "chromium-browser",
  "microsoft-edge",
  "microsoft-edge-stable",
];

const macPrograms = [
  "Google Chrome.app/Contents/MacOS/Google Chrome",
  "Chromium.app/Contents/MacOS/Chromium",
  "Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
];

const windowsPrograms = [
  "Google\\Chrome\\Application\\chrome.exe",
  "Chromium\\Application\\chrome.exe",
  "Microsoft\\Edge\\Application\\msedge.exe",
];

/**
 * @returns {string | undefined} the program file of a Chrome, Chromium or Edge on this computer; CHROME_PATH goes first
 */
export function findBrowser() {
  const { CHROME_PATH: chosen } = process.env;
  if (chosen !== undefined && chosen !== "") return chosen;
  return usualPlaces().find((file) => existsSync(file));
}

function usualPlaces() {
  const { HOME = "", PATH = "", PROGRAMFILES = "", LOCALAPPDATA = "" } = process.env;
  const old = process.env["PROGRAMFILES(X86)"] ?? "";
  if (process.platform === "win32") return crossed([PROGRAMFILES, old, LOCALAPPDATA], windowsPrograms);
  if (process.platform === "darwin") return crossed(["/Applications", join(HOME, "Applications")], macPrograms);
  return crossed(PATH.split(delimiter), commands);
}

/** @type {(folders: string[], names: string[]) => string[]} */
function crossed(folders, names) {
  return names.flatMap((name) => folders.filter((folder) => folder !== "").map((folder) => join(folder, name)));
}
