import { describe, expect, it } from "vitest";
import { againstUsualTest } from "../../src/methods/againstUsualTest";
import { allPairsTest } from "../../src/methods/allPairsTest";
import { allTogether, allTogetherOwnSpread } from "../../src/methods/allTogether";
import { contrast, type Duo } from "../../src/methods/contrast";
import { oneWayModel } from "../../src/methods/oneWayModel";
import { summary } from "../../src/numerics/moments";
import { near } from "../near";
import reference from "../reference/jointExact.json";

/** Every two of so many groups in R's order: the second against the first, the third against the first … */
function pairsOf(count: number): readonly Duo[] {
  return Array.from({ length: count }, (_, usual) =>
    Array.from({ length: count - usual - 1 }, (_unused, at): Duo => ({ usual, tried: usual + 1 + at })),
  ).flat();
}

describe.each(reference.cases)("$name: p by exact integration, closer than R's own", ({ groups, df, ...R }) => {
  const { tukey, dunnett } = R;
  const model = oneWayModel(groups);

  it("R's F and Welch's F", () => {
    const [pooled, own] = [allTogether(model), allTogetherOwnSpread(groups.map(summary))];
    near("F", pooled.f, R.f.f, { relative: 1e-11 });
    near("p", pooled.pValue, R.f.p, { relative: 1e-10 });
    near("Welch's F", own.f, R.welch.f, { relative: 1e-11 });
    near("its df", own.df[1], R.welch.df, { relative: 1e-11 });
    near("its p", own.pValue, R.welch.p, { relative: 1e-10 });
  });

  it("Tukey's p for every pair", () => {
    expect(model.df).toBe(df);
    const { pValue } = allPairsTest(model);
    const duos = pairsOf(groups.length);
    expect(duos.length).toBe(tukey.p.length);
    for (const [at, duo] of duos.entries()) {
      const { t } = contrast(model, duo);
      near(`q ${at}`, Math.abs(t) * Math.SQRT2, tukey.q[at] ?? Number.NaN, { relative: 1e-11 });
      near(`p ${at}`, pValue(t), tukey.p[at] ?? Number.NaN, { absolute: 1e-11 });
    }
  });

  // two groups are one comparison, which is Student's t and no integral
  if (dunnett === undefined) return;
  it("Dunnett's p against the first, and the critical value", () => {
    const { pValue, critical } = againstUsualTest(model, 0);
    near("critical", critical, dunnett.critical, { relative: 1e-10 });
    for (const [at, p] of dunnett.p.entries()) {
      const { t } = contrast(model, { usual: 0, tried: at + 1 });
      near(`t ${at}`, t, dunnett.t[at] ?? Number.NaN, { relative: 1e-11 });
      near(`p ${at}`, pValue(t), p, { absolute: 1e-11 });
    }
  });
});
