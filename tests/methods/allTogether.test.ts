import { describe, expect, it } from "vitest";
import { allTogether, allTogetherOwnSpread } from "../../src/methods/allTogether";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import { groupsOf, manyCases, modelOf } from "./manyCases";

describe("allTogether agrees with R's anova(), beds taken out first", () => {
  it.each(manyCases)("$name", (known) => {
    const found = allTogether(modelOf(known));
    near("F", found.f, known.f, { relative: 1e-9 });
    near("p", found.pValue, known.p, { relative: 1e-8 });
  });
});

describe("allTogetherOwnSpread agrees with R's oneway.test()", () => {
  it.each(manyCases.filter(({ beds }) => !beds))("$name", (known) => {
    const found = allTogetherOwnSpread(groupsOf(known).map(summary));
    near("F", found.f, known.welchF);
    near("p", found.pValue, known.welchP, { relative: 1e-9 });
    expect(found.df[0]).toBe(known.means.length - 1);
  });
});
