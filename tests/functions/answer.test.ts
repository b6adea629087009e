import { expect, it, vi } from "vitest";
import { cell, matrix } from "./call";

const swaps = vi.hoisted(() => ({ labelSwap: vi.fn(), signFlip: vi.fn() }));
vi.mock("../../src/methods/labelSwap", async (original) => {
  const real = await original<typeof import("../../src/methods/labelSwap")>();
  return { ...real, labelSwap: swaps.labelSwap.mockImplementation(real.labelSwap) };
});
vi.mock("../../src/methods/signFlip", async (original) => {
  const real = await original<typeof import("../../src/methods/signFlip")>();
  return { ...real, signFlip: swaps.signFlip.mockImplementation(real.signFlip) };
});

const plants = (from: number) => Array.from({ length: 12 }, (_, plant) => from + ((plant * 7) % 11));
const call = [plants(10), plants(14.3)] as const;

it("the verdict and single figures of 12 v 12 do not pay for 2 704 156 label swaps", () => {
  for (const show of [null, "answer", "Verdict", "Change", "Change low", "p value", "One plant decides"]) {
    cell("COMPARETWO", ...call, show);
    cell("COMPARETWO", ...call, show, "pairs");
  }
  expect(swaps.labelSwap).not.toHaveBeenCalled();
  expect(swaps.signFlip).not.toHaveBeenCalled();
});

it("the whole table pays for them once", () => {
  swaps.labelSwap.mockClear();
  matrix("COMPARETWO", ...call, "table");
  expect(swaps.labelSwap).toHaveBeenCalledTimes(1);
});
