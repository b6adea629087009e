import { spawn } from "node:child_process";

/**
 * Opens a page in the browser its owner uses; where there is none, nothing happens.
 *
 * @param {string} address
 */
export function openPage(address) {
  const [command, ...words] = opener();
  const child = spawn(command, [...words, address], {
    stdio: "ignore",
    detached: true,
  });
  child.on("error", () => {});
  child.unref();
}

/** @returns {[string, ...string[]]} */
function opener() {
  if (process.platform === "win32") return ["cmd", "/c", "start", ""];
  return [process.platform === "darwin" ? "open" : "xdg-open"];
}
