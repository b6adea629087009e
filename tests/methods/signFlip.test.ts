import { describe, expect, it } from "vitest";
import { differences } from "../../src/methods/differences";
import { signFlip } from "../../src/methods/signFlip";
import reference from "../reference/labelSwap.json";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

const flip = (trial: string) => {
  const { usual, tried } = trialOf(trial);
  return signFlip(differences(usual, tried));
};

describe("signFlip counts what R's enumeration counts", () => {
  const cases = reference.cases.filter(({ method }) => method === "flips");
  it.each(cases)("$trial: $hits of $tried", ({ trial, hits, tried }) => {
    expect(flip(trial)).toEqual({ p: hits / tried, hits, tried, exact: true });
  });
});

describe("signFlip agrees with printed figures", () => {
  it("Darwin's maize: 863 of 32 768 one way (Fisher 1935), p .05267 both ways", () => {
    expect(flip("darwin")).toMatchObject({ hits: 2 * 863, tried: 32_768 });
    printed("p", flip("darwin").p, "0.05267");
  });

  it("the boys' shoes: 14 of 1024 (Box, Hunter & Hunter)", () => {
    expect(flip("shoes")).toMatchObject({ hits: 14, tried: 1024 });
  });
});

describe("signFlip at its limits", () => {
  const alternating = (n: number) => Array.from({ length: n }, (_, i) => (i % 2 === 0 ? 3 : -2));

  it("looks at all flips up to 20 pairs, at 20 000 beyond, the same ones each time", () => {
    expect(signFlip(alternating(20))).toMatchObject({ tried: 2 ** 20, exact: true });
    const drawn = signFlip(alternating(21));
    expect(drawn).toMatchObject({ tried: 20_000, exact: false, p: (drawn.hits + 1) / 20_001 });
    expect(signFlip(alternating(21))).toEqual(drawn);
  });

  it("differences of 0 tell nothing; turning all signs changes no count", () => {
    expect(signFlip([0, 0, 0]).p).toBe(1);
    expect(signFlip([1, 2, -4, 3])).toEqual(signFlip([-1, -2, 4, -3]));
  });
});
