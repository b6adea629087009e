import { expect, it } from "vitest";
import { lossTest } from "../../src/methods/lossTest";
import { choose } from "../../src/numerics/choose";
import { near } from "../near";
import { figure } from "./found";

it("agrees with Fisher's tea tasting (1935): 3 of 4 against 1 of 4, p 34/70", () => {
  near("p", figure(lossTest({ lost: 1, kept: 3 }, { lost: 3, kept: 1 })), 34 / choose(8, 4), { relative: 1e-14 });
});

it("all lost in one treatment and none in the other: two of all the ways to lose them, by arithmetic", () => {
  near("p", figure(lossTest({ lost: 0, kept: 5 }, { lost: 5, kept: 0 })), 2 / choose(10, 5), { relative: 1e-14 });
});

it("does not care which treatment is which, and says when nothing was lost", () => {
  const [few, many] = [
    { lost: 1, kept: 9 },
    { lost: 6, kept: 5 },
  ];
  near("p", figure(lossTest(few, many)), figure(lossTest(many, few)), { relative: 1e-14 });
  expect(lossTest({ lost: 0, kept: 3 }, { lost: 0, kept: 8 })).toEqual({ absent: "no-losses" });
});

it("as many lost of as many is no sign of anything, p 1, though some were lost", () => {
  near("p", figure(lossTest({ lost: 2, kept: 8 }, { lost: 2, kept: 8 })), 1, { relative: 1e-14 });
});
