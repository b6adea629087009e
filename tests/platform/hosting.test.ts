import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { built } from "./built";

const office = "https://appsforoffice.microsoft.com";
const pages = ["taskpane.html", "practice/index.html"];

/** What a page may load, by the name of the directive. */
function policy(page: string): Record<string, string> {
  const [, content = ""] = /Content-Security-Policy" content="([^"]+)"/.exec(built(page)) ?? [];
  return Object.fromEntries(content.split("; ").map((rule) => [rule.split(" ")[0], rule.replace(/^\S+ /, "")]));
}

/** The headers that the built folder names for one file. */
function headersOf(file: string): string {
  return (
    built("_headers")
      .split(/\n\n/)
      .find((rule) => rule.startsWith(`${file}\n`)) ?? ""
  );
}

/** All files of the built folder. */
const files = readdirSync("dist", { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map(({ parentPath, name }) =>
    join(parentPath, name)
      .replaceAll("\\", "/")
      .replace(/^dist\//, ""),
  );

describe("the built folder", () => {
  it("may stand below any address: pages name their own files by relative addresses", () => {
    for (const page of pages) {
      const addresses = [...built(page).matchAll(/(?:src|href)="([^"]+)"/g)].map(([, address = ""]) => address);
      const outside = addresses.filter((address) => /^(?:\/|[a-z]+:)/.test(address));
      expect(outside, page).toEqual(page === "taskpane.html" ? [`${office}/lib/1/hosted/office.js`] : []);
    }
  });

  it("has names that change with the content, but for those that Excel or a page knows by name", () => {
    const fixed = files.filter((file) => /\.(?:js|css)$/.test(file) && !/\.[0-9a-f]{20}\./.test(file));
    expect(fixed.sort()).toEqual(["functions.js", "practice/standIn.js"]);
  });

  it("tells a host which headers Excel needs", () => {
    for (const file of ["/functions.js", "/functions.json"]) {
      expect(headersOf(file), file).toContain("Access-Control-Allow-Origin: *");
    }
  });

  it("tells a host to ask anew for what keeps its name when its content changes", () => {
    for (const file of ["functions.js", "functions.json", "practice/standIn.js", ...pages]) {
      expect(headersOf(`/${file}`), file).toContain("Cache-Control: no-cache");
    }
  });

  it("asks that no file be kept whose name stays while its content changes", () => {
    const rules = built("_headers").split(/\n\n/);
    const fixed = files.filter(
      (file) => /\.(?:js|html)$|functions\.json$/.test(file) && !/\.[0-9a-f]{20}\./.test(file),
    );
    for (const file of fixed) {
      const rule = rules.find((one) => one.startsWith(`/${file}\n`));
      expect(rule ?? "", file).toContain("Cache-Control: no-cache");
    }
  });

  it("is of one version: functions and pane can tell whether they belong together", () => {
    const version = /"(\d+\.\d+\.\d+\+[0-9a-f]{8})"/;
    const [, pane = ""] = /src="(taskpane\.[^"]+\.js)"/.exec(built("taskpane.html")) ?? [];
    const [, ofFunctions = ""] = version.exec(built("functions.js")) ?? [];
    const [, ofPane] = version.exec(built(pane)) ?? [];
    expect(ofFunctions).toContain(JSON.parse(readFileSync("package.json", "utf8")).version);
    expect(ofPane).toBe(ofFunctions);
  });
});

describe("what the pages may load", () => {
  it("is their own files; the pane's also Microsoft's library", () => {
    expect(policy("taskpane.html")).toEqual({
      "default-src": "'none'",
      "script-src": `'self' ${office}`,
      "style-src": "'self'",
      "img-src": "'self' data:",
      "connect-src": "'self'",
      "base-uri": "'none'",
      "form-action": "'none'",
    });
    expect(policy("practice/index.html")).toMatchObject({
      "default-src": "'none'",
      "script-src": "'self'",
      "connect-src": "'self'",
    });
  });

  it("is nothing that the page's own text brings: no script stands in it", () => {
    for (const page of pages) expect(built(page), page).not.toMatch(/<script[^>]*>[^<]|\son[a-z]+=/);
  });
});
