// @vitest-environment jsdom
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { built } from "./built";
import { manifestOrder } from "./manifestOrder";

const source = readFileSync("manifest/manifest.xml", "utf8");
const manifest = new DOMParser().parseFromString(source, "application/xml");

/** All elements of a name, prefix included. */
function all(name: string): Element[] {
  return [...manifest.getElementsByTagName(name)];
}

/** The values of one attribute wherever it stands. */
function values(attribute: string): string[] {
  return all("*").flatMap((element) => element.getAttribute(attribute) ?? []);
}

function only(name: string): Element {
  const [first, ...others] = all(name);
  if (first === undefined || others.length > 0) throw new Error(`not exactly one ${name}`);
  return first;
}

describe("the manifest", () => {
  it("is well-formed", () => {
    expect(all("parsererror").map((error) => error.textContent)).toEqual([]);
  });

  it.each(Object.entries(manifestOrder))("%s holds its elements in Excel's order", (parent, order) => {
    expect(all(parent).length).toBeGreaterThan(0);
    for (const element of all(parent)) {
      const names = [...element.children].map((child) => child.tagName);
      expect(order).toEqual(expect.arrayContaining(names));
      expect(names).toEqual([...names].sort((one, other) => order.indexOf(one) - order.indexOf(other)));
    }
  });

  it("keeps the id that Excel knows the add-in by", () => {
    expect(only("Id").textContent).toBe("4c6fc0ea-65dd-475f-9bf6-7431833b69dc");
  });

  it("has the version of package.json, in the four parts Excel wants", () => {
    expect(only("Version").textContent).toBe(`${JSON.parse(readFileSync("package.json", "utf8")).version}.0`);
  });

  it("asks for what the functions need and no more", () => {
    const sets = all("Set").map((set) => `${set.getAttribute("Name")} ${set.getAttribute("MinVersion")}`);
    expect(sets).toEqual(["SharedRuntime 1.1", "CustomFunctionsRuntime 1.3", "ExcelApi 1.12"]);
    expect(only("Permissions").textContent).toBe("ReadWriteDocument");
  });

  it("runs functions and pane in one page that lives as long as the workbook is open", () => {
    const page = "Taskpane.Url";
    expect(only("Runtime").getAttribute("resid")).toBe(page);
    expect(only("Runtime").getAttribute("lifetime")).toBe("long");
    expect(only("Page").firstElementChild?.getAttribute("resid")).toBe(page);
    expect(only("FunctionFile").getAttribute("resid")).toBe(page);
    expect(only("Action").firstElementChild?.getAttribute("resid")).toBe(page);
    expect(all("TaskpaneId")).toEqual([]);
  });

  it("names its functions FAIRBED.…", () => {
    expect(text(only("Namespace").getAttribute("resid"))).toBe("FAIRBED");
  });
});

/** The text or address behind a resid. */
function text(resid: string | null): string | null | undefined {
  return all("*")
    .find((element) => element.getAttribute("id") === resid)
    ?.getAttribute("DefaultValue");
}

describe("the manifest's texts and addresses", () => {
  it("are each found by their resid, none too long, none unused", () => {
    const resids = values("resid");
    const resources = [...only("Resources").querySelectorAll("[id]")].map(({ id }) => id);
    expect([...new Set(resids)].sort()).toEqual([...resources].sort());
    for (const resid of resids) expect(resid.length, resid).toBeLessThanOrEqual(32);
  });

  it("keep within Excel's lengths", () => {
    const short = [...only("bt:ShortStrings").children, ...all("DisplayName")];
    const long = [...only("bt:LongStrings").children, ...all("Description")];
    for (const element of short) expect(lengthOf(element)).toBeLessThanOrEqual(125);
    for (const element of long) expect(lengthOf(element)).toBeLessThanOrEqual(250);
  });

  it("are https", () => {
    const urls = values("DefaultValue").filter((value) => value.includes("://"));
    expect(urls.length).toBeGreaterThan(0);
    for (const url of urls) expect(new URL(url).protocol, url).toBe("https:");
  });

  it("lead to files that were built", () => {
    const urls = values("DefaultValue").filter((value) => value.includes("://"));
    for (const url of urls) expect(built(new URL(url).pathname.slice(1)).length, url).toBeGreaterThan(0);
  });
});

/** Characters of a text of the manifest, 0 where an element only points at one. */
function lengthOf(element: Element): number {
  return element.getAttribute("DefaultValue")?.length ?? 0;
}

describe("the icons", () => {
  const wanted = [
    ["IconUrl", 32],
    ["HighResolutionIconUrl", 64],
  ] as const;

  it.each(wanted)("%s is %i pixels wide and high", (name, size) => {
    expect(sizeOf(only(name).getAttribute("DefaultValue"))).toEqual([size, size]);
  });

  it("of the ribbon are as large as they say, in the three sizes Excel wants", () => {
    const images = all("bt:Image").filter((image) => image.hasAttribute("size"));
    const sizes = images.map((image) => Number(image.getAttribute("size")));
    expect([...new Set(sizes)]).toEqual([16, 32, 80]);
    expect(images.map((image) => sizeOf(text(image.getAttribute("resid"))))).toEqual(sizes.map((size) => [size, size]));
  });
});

/** Width and height of a PNG file: https://www.w3.org/TR/png/#11IHDR. */
function sizeOf(url: string | null | undefined): [number, number] {
  const bytes = readFileSync(`manifest${new URL(url ?? "").pathname}`);
  expect(bytes.toString("latin1", 1, 4)).toBe("PNG");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}
