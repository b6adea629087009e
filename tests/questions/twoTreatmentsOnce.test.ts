import { expect, it, vi } from "vitest";
import { compareTwo } from "../../src/questions/compareTwo";
import { found, given } from "./range";

const { labelSwap, lossTest } = vi.hoisted(() => ({ labelSwap: vi.fn(), lossTest: vi.fn() }));
vi.mock("../../src/methods/labelSwap", async (original) => {
  const real = await original<typeof import("../../src/methods/labelSwap")>();
  return { ...real, labelSwap: labelSwap.mockImplementation(real.labelSwap) };
});
vi.mock("../../src/methods/lossTest", async (original) => {
  const real = await original<typeof import("../../src/methods/lossTest")>();
  return { ...real, lossTest: lossTest.mockImplementation(real.lossTest) };
});

it("works out label swap and loss test once, when asked", () => {
  labelSwap.mockClear();
  lossTest.mockClear();
  const answer = found(compareTwo(given({ usual: [4, 5, 6, 5], new: [7, 8, 9, 8] })));
  expect(labelSwap).not.toHaveBeenCalled();
  expect(lossTest).not.toHaveBeenCalled();
  expect(answer.labelSwap()).toBe(answer.labelSwap());
  expect(answer.lossP()).toBe(answer.lossP());
  expect(labelSwap).toHaveBeenCalledTimes(1);
  expect(lossTest).toHaveBeenCalledTimes(1);
});
