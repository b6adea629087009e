// @vitest-environment jsdom
import { expect, it } from "vitest";
import { filesUnder } from "../house/files";
import { built } from "../platform/built";

const manifest = new DOMParser().parseFromString(built("manifest.xml"), "application/xml");

// Add-ins from the store may neither show their pane by script nor open it with the workbook any more.
it("the ribbon's one button shows the pane by itself", () => {
  const actions = [...manifest.getElementsByTagName("Action")];
  expect(actions.map((action) => action.getAttribute("xsi:type"))).toEqual(["ShowTaskpane"]);
  for (const { path, text } of filesUnder("src", /\.ts$/)) expect(text, path).not.toContain("showAsTaskpane");
});
