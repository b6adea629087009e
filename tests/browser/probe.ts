import type { Page } from "playwright-core";
import { openPage } from "./page";
import { ready } from "./practicePage";

/**
 * Opens the practice sheet with three functions more: FAIRBED.PROBE answers with its arguments as JSON,
 * FAIRBED.BLOCK with a block of two by two, FAIRBED.REFUSED with a refusal.
 */
export async function openWithProbe(): Promise<Page> {
  const page = await openPage("practice/");
  await page.route("**/functions.js", async (route) => {
    const built = await route.fetch();
    await route.fulfill({ response: built, body: `${await built.text()}${probes}` });
  });
  await page.route("**/functions.json", async (route) => {
    const built = await route.fetch();
    const file = (await built.json()) as { functions: object[] };
    await route.fulfill({ response: built, json: { ...file, functions: [...file.functions, ...descriptions] } });
  });
  await page.reload();
  await ready(page);
  return page;
}

const descriptions = ["PROBE", "BLOCK", "REFUSED"].map((id) => ({
  id,
  name: id,
  description: "For a test",
  parameters: [
    { name: "cells", dimensionality: "matrix" },
    { name: "show", optional: true },
    { name: "how", optional: true },
  ],
}));

/** A script for the page, run after the built functions. */
const probes = `
CustomFunctions.associate("PROBE", (...given) => [[JSON.stringify(given)]]);
CustomFunctions.associate("BLOCK", () => [["left", 1], ["", true]]);
CustomFunctions.associate("REFUSED", () => {
  throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "no numbers in these cells");
});
`;
