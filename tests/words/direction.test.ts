import { expect, test } from "vitest";
import { directionWords, mirrored } from "../../src/words/direction";

test("mirrored turns up to down and back, and leaves what has no direction", () => {
  expect(mirrored("up-enough")).toBe("down-enough");
  expect(mirrored("open-down")).toBe("open-up");
  for (const verdict of ["up-small", "up-unclear", "leaning-up", "level", "open", "few", "none"] as const) {
    expect(mirrored(mirrored(verdict))).toBe(verdict);
  }
  for (const verdict of ["level", "open", "few", "none"] as const) expect(mirrored(verdict)).toBe(verdict);
});

test("gain and loss are said only where more is wanted", () => {
  expect(directionWords(false)).toEqual({ rise: "gain", fall: "loss", ahead: "ahead", behind: "behind" });
  expect(Object.values(directionWords(true))).not.toContain("gain");
});
