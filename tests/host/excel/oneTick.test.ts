import { expect, it, vi } from "vitest";
import { oneTick } from "../../../src/host/excel/oneTick";

const lengths = vi.fn(async (questions: readonly string[]) => questions.map(({ length }) => length));

it("questions of one tick are answered together, each once; those of the next tick anew", async () => {
  const ask = oneTick(lengths);
  expect(await Promise.all([ask("one"), ask("three"), ask("one")])).toEqual([3, 5, 3]);
  expect(await ask("one")).toBe(3);
  expect(lengths.mock.calls).toEqual([[["one", "three"]], [["one"]]]);
});

it("a question without an answer gets null", async () => {
  const ask = oneTick<number>(async () => []);
  expect(await ask("late")).toBe(null);
});
