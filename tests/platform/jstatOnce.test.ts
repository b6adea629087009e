import { readdirSync } from "node:fs";
import { expect, it } from "vitest";
import { built } from "./built";

/** The first of the coefficients in jstat's own log-gamma: a mark that shrinking leaves alone. */
const mark = "76.18009172947146";

it("jstat is in the worksheet functions once, and in neither pane", () => {
  expect(built("functions.js").split(mark)).toHaveLength(2);
  const panes = [...readdirSync("dist"), ...readdirSync("dist/practice").map((name) => `practice/${name}`)];
  for (const name of panes.filter((path) => /(taskpane|practice)\.\w+\.js$/.test(path))) {
    expect(built(name), name).not.toContain(mark);
  }
});
