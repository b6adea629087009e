import { expect, it } from "vitest";
import { code, filesUnder, pureRooms } from "./files";

/** What would make the same inputs answer otherwise on another machine or another day, or speak on the side. */
const unruly = /Math\.random|\bDate\b[.(]|\bconsole\.|\bIntl\.|\btoLocale\w+\(|\blocaleCompare\(/;

it.each(pureRooms)("same inputs, same answer: %s knows no clock, no chance, no console, no locale", (room) => {
  const found = filesUnder(`src/${room}`, /\.ts$/).filter((file) => unruly.test(code(file)));
  expect(found.map(({ path }) => path)).toEqual([]);
});

it("jstat's functions known to be wrong are not used", () => {
  const wrong = /\bjstat\.(tukey|qtest|tukeyhsd)\b|\.(qtest|tukeyhsd)\(/i;
  const found = filesUnder("src/numerics", /\.ts$/).filter((file) => wrong.test(code(file)));
  expect(found.map(({ path }) => path)).toEqual([]);
});
