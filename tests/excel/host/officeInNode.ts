import { readFileSync } from "node:fs";
import { join } from "node:path";
import { JSDOM } from "jsdom";
import type { FakeExcel } from "./fakeExcel";
import { windowsExternal } from "./windowsExternal";

/** Where the shipped pages ask for Microsoft's library, and the same files as developers get them from npm. */
const cdn = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const library = "node_modules/@microsoft/office-js/dist";

/** What the manifest asks of Excel, as Excel tells its library; `CustomFunctions` is how it names the runtime. */
export const declaredSets = {
  ExcelApi: "1.12",
  CustomFunctionsRuntime: "1.3",
  SharedRuntime: "1.1",
  CustomFunctions: "1.7",
};

/** A page in which office.js runs, and what it put there. */
export interface OfficePage {
  /** Runs a script of ours as the page's own. */
  readonly run: (script: string) => unknown;
  readonly close: () => void;
}

/**
 * Opens an empty page in the fake Excel and waits for the unmodified office.js to be ready in it. `Excel`, `Office` and
 * `OfficeExtension` become this process's own, so that our adapter can be tested as it is written.
 */
export async function officeInNode(excel: FakeExcel, sets: Readonly<Record<string, string>> = declaredSets) {
  const { window } = new JSDOM(`<!doctype html><head><script src="${cdn}office.js"></script></head><body></body>`, {
    url: "https://localhost:3000/taskpane.html",
    runScripts: "outside-only",
  });
  const joint = windowsExternal(excel, sets);
  excel.deliver = joint.deliver;
  Object.defineProperty(window, "external", { value: joint.external });
  // A script element does not load by itself here.
  new window.MutationObserver((records) => {
    for (const node of records.flatMap(({ addedNodes }) => [...addedNodes])) {
      if (!(node instanceof window.HTMLScriptElement)) continue;
      window.eval(officeFile(node.src));
      node.dispatchEvent(new window.Event("load"));
    }
  }).observe(window.document.head, { childList: true });
  window.eval(officeFile(`${cdn}office.js`));
  const page = window as unknown as { Office: typeof Office; OfficeExtension: object; Excel: object };
  await page.Office.onReady();
  window.eval("OfficeExtension.CommonUtility._doApiNotSupportedCheck = true");
  Object.assign(globalThis, { Office: page.Office, Excel: page.Excel, OfficeExtension: page.OfficeExtension });
  const opened: OfficePage = { run: (script) => window.eval(script), close: () => window.close() };
  return opened;
}

/** A file of Microsoft's library by the address that pages know. */
export function officeFile(address: string): string {
  return readFileSync(join(library, address.slice(cdn.length)), "utf8");
}
