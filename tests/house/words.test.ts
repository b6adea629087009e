import { existsSync } from "node:fs";
import { expect, it } from "vitest";
import { filesUnder } from "./files";

const places = [
  "src",
  "tests",
  "manifest",
  ".build",
  ".ci",
  "README.md",
  "DEVELOPERS.md",
  "package.json",
  "package-lock.json",
];
const texts = /\.(ts|js|cjs|css|html|xml|svg|json|md|R|csv|txt)$|run$/;
const self = "tests/house/words.test.ts";
const files = places
  .filter(existsSync)
  .flatMap((place) => filesUnder(place, texts))
  .filter(({ path }) => path !== self);

/** Words that may stand nowhere in the project, and why. */
const banned: readonly (readonly [string, RegExp])[] = [
  ["a path of one machine", /(?<![\w.])\/(work|root|home\/\w|tmp|Users\/\w)\//],
  ["a silenced check", /@ts-(ignore|nocheck|expect-error)|biome-ignore|eslint-disable|istanbul ignore|v8 ignore/],
  ["a test that does not run", /\b(it|test|describe)\.(skip|todo|only)\b/],
  ["a registry other than npm's", /"resolved": "https?:\/\/(?!registry\.npmjs\.org\/)/],
];

it.each(banned)("no file holds %s", (_what, pattern) => {
  expect(files.filter(({ text }) => pattern.test(text)).map(({ path }) => path)).toEqual([]);
});

it("no file is named after nothing in particular", () => {
  const vague = /(^|\/)(utils?|helpers?|managers?|misc|common|index)\b[^/]*$/i;
  expect(files.map(({ path }) => path).filter((path) => vague.test(path))).toEqual([]);
});
