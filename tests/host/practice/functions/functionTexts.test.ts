import { afterEach, expect, it, vi } from "vitest";
import { functionTexts } from "../../../../src/host/practice/functions/functionTexts";

afterEach(() => {
  vi.unstubAllGlobals();
});

it("functionTexts reads the descriptions of all functions", async () => {
  const functions = [{ id: "UPDOWN", parameters: [] }];
  vi.stubGlobal("fetch", async () => new Response(JSON.stringify({ functions })));
  expect(await functionTexts("../functions.json")).toEqual(functions);
});

it("functionTexts rejects when the file is not there", async () => {
  vi.stubGlobal("fetch", async () => new Response("Not found", { status: 404 }));
  await expect(functionTexts("../functions.json")).rejects.toThrow("functions.json: 404");
});
