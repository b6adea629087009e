import { expect, test } from "vitest";
import { planCall } from "../../src/words/planCall";

const separate = { treatments: 2, beds: null } as const;

test("planCall writes a formula that can be typed: plain hyphen, no spaces, no more than is needed", () => {
  expect(planCall({ change: 0.27, unevenness: 0.329, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(27%,33%)");
  expect(planCall({ change: -0.1, unevenness: null, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(-10%,35%)");
});

test("planCall adds treatments and beds where they differ from the ordinary", () => {
  const call = { change: 0.3, unevenness: 0.2 };
  expect(planCall({ ...call, treatments: 4, beds: null })).toBe('=FAIRBED.PLANTSNEEDED(30%,20%,"answer",4)');
  expect(planCall({ ...call, treatments: 2, beds: "one each" })).toBe(
    '=FAIRBED.PLANTSNEEDED(30%,20%,"answer",2,"one each")',
  );
  expect(planCall({ ...call, treatments: 3, beds: 6 })).toBe('=FAIRBED.PLANTSNEEDED(30%,20%,"answer",3,6)');
});

test("planCall stays within what PLANTSNEEDED takes (METHODS 4.4)", () => {
  expect(planCall({ change: 12, unevenness: 5, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(290%,290%)");
  expect(planCall({ change: -2, unevenness: 0, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(-90%,35%)");
  expect(planCall({ change: 0.004, unevenness: 0.001, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(0.4%,1%)");
  expect(planCall({ change: -0.00001, unevenness: 0.01, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(-0.001%,1%)");
});

test("planCall keeps two figures of a small percent, which a whole one would change by half", () => {
  expect(planCall({ change: 0.014, unevenness: 0.0246, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(1.4%,2.5%)");
  expect(planCall({ change: -0.0496, unevenness: 0.0504, ...separate })).toBe("=FAIRBED.PLANTSNEEDED(-5%,5%)");
});
