import { existsSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Frame, type Route } from "playwright-core";
import { afterAll, afterEach, expect, inject } from "vitest";
import { type FakeExcel, fakeExcel } from "../host/fakeExcel";
import { declaredSets, officeFile } from "../host/officeInNode";
import { webHost } from "../host/webHost";
import { windowsExternal } from "../host/windowsExternal";
import type { Workbook } from "../host/workbook";

/** The two kinds of Excel: a frame in a page that it talks to by messages, and a web view with `window.external`. */
export type Kind = "on the web" | "for Windows";

const site = "https://fairbed.test";
/** The built files stand below the site's top, as a grower's own host may have them. */
const folder = "/growers/add-in";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
};

let launched: Promise<Browser> | undefined;
const contexts: BrowserContext[] = [];
const faults: string[] = [];

afterEach(async () => {
  for (const context of contexts.splice(0)) await context.close();
  expect(faults.splice(0), "what the page complained about").toEqual([]);
});

afterAll(async () => {
  await (await launched)?.close();
});

/**
 * Opens the built pane, with the functions in it, in a fake Excel. No server and no network: the router answers.
 *
 * @param functions changes functions.js, as if another version of it had been kept
 */
export async function openInExcel(
  kind: Kind,
  book: Workbook,
  functions: (script: string) => string = (script) => script,
): Promise<{ excel: FakeExcel; pane: Frame }> {
  launched ??= chromium.launch({ executablePath: inject("browser"), args: ["--no-sandbox", "--disable-gpu"] });
  const context = await (await launched).newContext({ viewport: { width: 350, height: 600 }, locale: "en-US" });
  contexts.push(context);
  const page = await context.newPage();
  page.on("pageerror", ({ message }) => faults.push(message));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  const excel = fakeExcel(book);
  await page.exposeFunction("hostExecute", excel.execute);
  const listened: number[] = [];
  await page.exposeFunction("hostRegister", (event: number) => {
    listened.push(event);
    excel.register(event);
  });
  await page.route("**/*", (route) => answer(route, functions));
  await page.exposeFunction("hostKeep", excel.keep);
  const settings = JSON.stringify(excel.settings());
  const door = `{
    execute: window.hostExecute,
    register: window.hostRegister,
    keep: window.hostKeep,
    settings: () => (${settings}),
  }`;
  const host = kind === "on the web" ? webHost : windowsExternal;
  await page.addInitScript(`
    const host = ${host.name === "webHost" ? "window === top" : "true"} && (${host})(${door}, ${JSON.stringify(declaredSets)});
    ${kind === "on the web" ? "window.deliver = host;" : "window.deliver = host.deliver;"}
    ${kind === "on the web" ? "" : 'Object.defineProperty(window, "external", { value: host.external });'}
  `);
  await page.goto(`${site}${kind === "on the web" ? "/excel.html" : `${folder}/taskpane.html`}`);
  excel.deliver = (event, payload) => {
    void page.evaluate(`window.deliver(${JSON.stringify(event)}, ${JSON.stringify(payload)})`);
  };
  await expect.poll(() => page.frames().length).toBe(kind === "on the web" ? 2 : 1);
  const pane = page.frames().at(-1);
  if (pane === undefined) throw new Error("no frame");
  await pane.getByRole("tab").first().waitFor();
  // 2: the pane follows the selection
  await expect.poll(() => listened).toContain(2);
  await pane.evaluate("OfficeExtension.CommonUtility._doApiNotSupportedCheck = true");
  return { excel, pane };
}

/** Excel's own page, Microsoft's library from node_modules, and the built files below their folder. */
async function answer(route: Route, functions: (script: string) => string): Promise<void> {
  const { origin, pathname, href } = new URL(route.request().url());
  if (origin === "https://appsforoffice.microsoft.com") {
    return route.fulfill({
      contentType: "text/javascript",
      headers: { "access-control-allow-origin": "*" },
      body: officeFile(href.replace(/[?#].*$/, "")),
    });
  }
  if (pathname === "/excel.html") return route.fulfill({ contentType: "text/html", body: excelPage });
  const file = join("dist", pathname.slice(folder.length));
  const ours = origin === site && pathname.startsWith(`${folder}/`) && existsSync(file);
  if (!ours) faults.push(`asked for ${href}`);
  if (!ours) return route.fulfill({ status: 404 });
  const body = file.endsWith("functions.js") ? functions(readFileSync(file, "utf8")) : readFileSync(file);
  return route.fulfill({ contentType: types[extname(file)] ?? "image/png", body });
}

const conversation = JSON.stringify({ xdmInfo: `conversation|fairbed|${site}` });
const excelPage = `<!doctype html><title>Excel</title><link rel="icon" href="data:," />
  <iframe name='${conversation}' width="340" height="580"
    src="${folder}/taskpane.html?_host_Info=Excel$Web$16.01$en-US$x$$disableLogging$3"></iframe>`;
