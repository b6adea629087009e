import { expect, it } from "vitest";
import * as normal from "../../src/numerics/normal";
import { normalAverage, stepFor } from "../../src/numerics/normalAverage";
import { near } from "../near";

const whole = { from: -9, to: 9, step: 0.5 };

it("the average of 1, z² and z⁴ is 1, 1 and 3", () => {
  near(
    "1",
    normalAverage(() => 1, whole),
    1,
    { relative: 1e-14 },
  );
  near(
    "z²",
    normalAverage((z) => z * z, whole),
    1,
    { relative: 1e-14 },
  );
  near(
    "z⁴",
    normalAverage((z) => z ** 4, whole),
    3,
    { relative: 1e-14 },
  );
});

// the largest of k + 1 equal draws is each of them equally often
it("the average of Φ(z)^k is 1/(k + 1) with the step made for it", () => {
  for (const k of [1, 4, 19, 99]) {
    const stretch = { from: -9, to: 9, step: stepFor(k) };
    near(
      `${k}`,
      normalAverage((z) => normal.lowerTail(z) ** k, stretch),
      1 / (k + 1),
      { relative: 1e-13 },
    );
  }
});

it("steeper factors want a finer step", () => {
  expect(stepFor(8)).toBeLessThan(stepFor(3));
});
