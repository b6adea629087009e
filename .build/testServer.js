import { findBrowser } from "./findBrowser.js";
import { installBrowser } from "./installBrowser.js";
import { serve } from "./serve.js";

/**
 * Before the browser tests: serves the built files and tells the tests where they are and which browser to use.
 *
 * @param {import("vitest/node").TestProject} project
 */
export default async function testServer(project) {
  const { address, close } = await serve(0);
  project.provide("address", address);
  project.provide("browser", findBrowser() ?? installBrowser());
  return close;
}
