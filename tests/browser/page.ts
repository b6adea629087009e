import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, afterEach, expect, inject } from "vitest";

declare module "vitest" {
  interface ProvidedContext {
    /** Where the built files are served: "http://localhost:4173". */
    address: string;
    /** The program file of the browser. */
    browser: string;
  }
}

let launched: Promise<Browser> | undefined;
const faults: string[] = [];

afterEach(() => {
  expect(faults.splice(0), "what the page complained about").toEqual([]);
});

afterAll(async () => {
  await (await launched)?.close();
});

/**
 * Opens a built page in a fresh profile of a browser that lives as long as the test file. After each test, an error
 * in the page or its console, an answer that failed, or a request to another origin is a failure of that test.
 *
 * @param path from the built folder: "practice/"
 */
export async function openPage(path = "practice/"): Promise<Page> {
  launched ??= chromium.launch({
    executablePath: inject("browser"),
    args: ["--disable-gpu"],
  });
  const page = await (await launched).newPage({
    viewport: { width: 1366, height: 768 },
    locale: "en-US",
  });
  watch(page);
  await page.goto(`${inject("address")}/${path}`);
  return page;
}

function watch(page: Page): void {
  page.on("pageerror", (error) => faults.push(`error: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`console: ${message.text()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) faults.push(`${response.status()}: ${response.url()}`);
  });
  page.on("request", (request) => {
    const { origin, protocol } = new URL(request.url());
    const inside = origin === inject("address") || protocol === "data:" || protocol === "blob:";
    if (!inside) faults.push(`request to another origin: ${request.url()}`);
  });
}
