import { expect, it } from "vitest";
import { columnEntries } from "../../src/ranges/columnEntries";
import { readColumn } from "../../src/ranges/readColumn";
import { column } from "./column";

it("columnEntries gives each cell its place", () => {
  const range = column(["Straw", 177, " 506* ", true, { error: "#N/A" }, null, "dead"]);
  const entries = columnEntries(range, readColumn(range, {}));
  const kinds = ["value", "value", "not-recorded", "not-recorded", "not-recorded", "lost"];
  expect(entries.map(({ kind }) => kind)).toEqual(kinds);
  expect(entries.map(({ place }) => place.cell)).toEqual(["D2", "D3", "D4", "D5", "D6", "D7"]);
});

it("columnEntries leaves out a number that looks like a date, but not a converted one", () => {
  const range = column(["Straw (g)", 300, 310, 290, 45_112, "45 kg"]);
  const entries = columnEntries(range, readColumn(range, {}));
  expect(entries[3]).toMatchObject({ kind: "not-recorded", why: "date" });
  expect(entries[4]).toMatchObject({ kind: "value", value: 45_000, read: "unit-converted" });
});

it("columnEntries takes a date in a text for one too, but not a number with a mark", () => {
  const range = column([300, "none", 290, "45112", "45112*"]);
  const entries = columnEntries(range, readColumn(range, {}));
  expect(entries[3]).toMatchObject({ kind: "not-recorded", why: "date" });
  expect(entries[4]).toMatchObject({ kind: "value", value: 45_112, read: "mark-removed" });
});
