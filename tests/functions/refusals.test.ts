import { expect, it } from "vitest";
import { problemCode } from "../../src/cells/problemCode";
import type { Problem } from "../../src/nouns/problem";
import { at, type Id, refused } from "./call";

type Refusal = readonly [what: string, id: Id, ...given: readonly unknown[]];

const plants = [4, 5, 6, 5.5];
const plan = [0.3, 0.25] as const;

const shared: readonly Refusal[] = [
  ["nothing given", "UPDOWN", 24, null],
  ["nothing given", "PERPLANT", null],
  ["nothing given", "UNEVENNESS", null],
  ["nothing given", "COMPARETWO", null, plants],
  ["nothing given", "PLANTSNEEDED", "", 0.25],
  ["nothing given", "SMALLESTCHANGE", null, 0.25],
  ["nothing given", "CHANCETOSEE", 0.3, [[null]], 0.25],
  ["an unknown show", "UPDOWN", 24, 72, "percent"],
  ["an unknown show", "PERPLANT", plants, "average"],
  ["an unknown show", "UNEVENNESS", plants, "Strw", ["Straw", "Straw", "Bare", "Bare"]],
  ["an unknown show", "COMPARETWO", plants, plants, "p"],
  ["an unknown show", "PLANTSNEEDED", ...plan, "plants"],
  ["a show that is a number", "SMALLESTCHANGE", 8, 0.25, 0.8],
  ["a show of several cells", "CHANCETOSEE", 0.3, 8, 0.25, ["words", "say"]],
  ["a word one place further on", "COMPARETWO", plants, plants, "pairs"],
  ["a word four places further on", "COMPARETWO", plants, plants, "count as zero"],
  ["a word two places further on", "PERPLANT", plants, "leave out"],
  ["a word two places further on", "PLANTSNEEDED", ...plan, "one each"],
  ["a word four places further on", "SMALLESTCHANGE", 8, 0.25, "less"],
];

const amounts: readonly Refusal[] = [
  ["a harvest below zero", "UPDOWN", at("Trial!B2:B5", [4, 5, -6, 5]), plants],
  ["a harvest below zero", "PERPLANT", [4, -5, 6]],
  ["a total at the end", "COMPARETWO", at("Trial!D6:D10", [3, 4, 6, 5, 18]), plants],
  ["an average at the end", "UNEVENNESS", at("Trial!D6:D10", [3, 4, 6, 5, 4.5])],
  ["an average at the end, no address", "PERPLANT", [3, 4, 6, 5, 4.5]],
  ["units that differ", "COMPARETWO", ["Bare (g)", ...plants], ["Straw (cm)", ...plants]],
  ["no usable plants", "UPDOWN", at("Trial!B2:B4", ["lost", "?", "lost"]), plants],
  ["no usable plants", "PERPLANT", [null, "not weighed"]],
  ["no usable plants", "UNEVENNESS", ["lost", "lost"]],
  ["all lost", "PERPLANT", at("Trial!C2:C4", ["lost", "dead", "stolen"])],
  ["usual is 0", "UPDOWN", 0, 7],
  ["usual averages 0", "UPDOWN", [0, 0, "none"], [1234.5, 1300], "Change low"],
  ["heights that differ, paired", "COMPARETWO", plants, [...plants, 7], null, "pairs"],
  ["sizes that differ, paired", "COMPARETWO", [plants], plants, null, "beds"],
  ["heights that differ", "UNEVENNESS", plants, null, ["Straw", "Bare", "Straw"]],
  ["amounts and labels swapped", "UNEVENNESS", ["Straw", "Bare", "Straw"], null, [4, 5, 6]],
  ["pick totals for plants", "PERPLANT", [1, 2, 3, 4, 5], null, 6],
  ["planted in words", "PERPLANT", 24, null, "six"],
  ["planted all empty", "PERPLANT", 24, null, [null, null]],
  ["planted not whole", "PERPLANT", 24, null, 5.5],
  ["planted 0", "PERPLANT", 24, null, 0],
];

const options: readonly Refusal[] = [
  ["how", "COMPARETWO", plants, plants, null, "t test"],
  ["lost_plants", "PERPLANT", plants, null, null, "zero"],
  ["direction", "SMALLESTCHANGE", 8, 0.25, null, null, null, null, "up"],
  ["beds in words", "PLANTSNEEDED", ...plan, null, null, "each"],
  ["beds not whole", "PLANTSNEEDED", ...plan, null, null, 2.5],
  ["treatments", "PLANTSNEEDED", ...plan, null, 1],
  ["treatments", "CHANCETOSEE", 0.3, 8, 0.25, null, 21],
  ["treatments in words", "SMALLESTCHANGE", 8, 0.25, null, "three"],
  ["plants_each not whole", "CHANCETOSEE", 0.3, 7.5, 0.25],
  ["plants_each below 2", "SMALLESTCHANGE", 1, 0.25],
  ["plants_each below 2", "CHANCETOSEE", 0.3, 1, 0.25],
  ["plants_each not a multiple of beds", "SMALLESTCHANGE", 8, 0.25, null, null, 3],
  ["plants_each not a multiple of beds", "CHANCETOSEE", 0.3, 8, 0.25, null, 3, 5],
  ["no draw number", "DRAWLOTS", 2, 6, null, "table"],
  ["draw number not whole", "DRAWLOTS", 2, 6, 2.5],
  ["draw number typed as a time", "DRAWLOTS", 2, 6, 0.6048611],
  ["draw number in words", "DRAWLOTS", 2, 6, "noon"],
  ["treatments called alike", "DRAWLOTS", ["Straw", "Bare soil", "straw"], 6, 1431],
  ["one treatment only", "DRAWLOTS", "Straw", 6, 1431],
  ["an error for a name", "DRAWLOTS", at("Trial!A2:A3", ["Straw", { type: "Error", basicValue: "#N/A" }]), 6, 1431],
  ["more than 2 000 spots", "DRAWLOTS", 4, 600, 1431],
  ["plants that do not share out among the beds", "DRAWLOTS", 2, 7, 1431, null, 3],
  ["a word one place further on", "DRAWLOTS", 2, 6, 1431, "one each"],
  ["several cells for an option", "COMPARETWO", plants, plants, null, null, [0.1, 0.2]],
];

const percents: readonly Refusal[] = [
  ["no change", "PLANTSNEEDED", 0, 0.25],
  ["change −100 %", "PLANTSNEEDED", -1, 0.25],
  ["change −100 %", "CHANCETOSEE", "-100%", 8, 0.25],
  ["change typed as points", "PLANTSNEEDED", 30, 0.25],
  ["change typed as points", "PLANTSNEEDED", "30", 0.25],
  ["change typed as points", "CHANCETOSEE", -30, 8, 0.25],
  ["change 3", "PLANTSNEEDED", 3, 0.25],
  ["change of 500 %", "PLANTSNEEDED", "500%", 0.25],
  ["change in words", "CHANCETOSEE", "a third", 8, 0.25],
  ["unevenness typed as points", "PLANTSNEEDED", 0.3, 25],
  ["unevenness 0", "SMALLESTCHANGE", 8, 0],
  ["unevenness below 0", "CHANCETOSEE", 0.3, 8, -0.2],
  ["unevenness of 300 %", "PLANTSNEEDED", 0.3, "300%"],
  ["worthwhile 0", "COMPARETWO", plants, plants, null, null, 0],
  ["worthwhile typed as points", "COMPARETWO", plants, plants, null, null, 10],
  ["worthwhile typed as points", "CHANCETOSEE", 0.3, 8, 0.25, null, 2, null, -10],
  ["worthwhile of 100 %", "PLANTSNEEDED", ...plan, null, null, null, null, null, "100%"],
  ["confidence typed as points", "COMPARETWO", plants, plants, null, null, null, 95],
  ["confidence of 100 %", "UPDOWN", plants, plants, null, 1],
  ["confidence too low", "UPDOWN", plants, plants, null, 0.4],
  ["chance typed as points", "PLANTSNEEDED", ...plan, null, null, null, 80],
  ["chance of 100 %", "PLANTSNEEDED", ...plan, null, null, null, 1],
  ["chance too low", "SMALLESTCHANGE", 8, 0.25, null, null, null, "5%"],
  ["losses typed as points", "PLANTSNEEDED", ...plan, null, null, null, null, 10],
  ["losses below 0", "PLANTSNEEDED", ...plan, null, null, null, null, -0.1],
  ["losses of 100 %", "PLANTSNEEDED", ...plan, null, null, null, null, "100%"],
];

const ways = ["Bare", "Straw", "Bare", "Straw"];

const layouts: readonly Refusal[] = [
  ["nothing given", "COMPAREMANY", plants, null],
  ["an unknown show", "COMPAREMANY", plants, ways, "Strw"],
  ["a word three places further on", "COMPAREMANY", plants, ways, "own unevenness"],
  ["an unknown how", "COMPAREMANY", plants, ways, null, null, "Bare", "every pair"],
  ["heights that differ", "COMPAREMANY", plants, ways, null, [1, 1, 2]],
  ["amounts and labels swapped", "COMPAREMANY", ["Straw", "Bare", "Straw"], [4, 5, 6]],
  ["one treatment only", "COMPAREMANY", plants, ["Bare", "Bare", "Bare", "Bare"]],
  ["no treatments named", "COMPAREMANY", plants, [null, null, null, null]],
  ["too many treatments", "COMPAREMANY", many(21), many(21).map((at) => `Mulch ${at}`)],
  ["the usual not found", "COMPAREMANY", plants, ways, null, null, "Bark"],
  ["against a usual that is not named", "COMPAREMANY", plants, ways, null, null, null, "against usual"],
  ["each treatment in a bed of its own", "COMPAREMANY", plants, ["Bare", "Bare", "Straw", "Straw"], null, [1, 1, 2, 2]],
  ["beds of one treatment each", "COMPAREMANY", plants, ["Bare", "Bare", "Straw", "Straw"], null, [1, 2, 3, 4]],
  [
    "treatments that no bed links",
    "COMPAREMANY",
    [...plants, 5, 6],
    [...ways, "Bark", "Bark"],
    null,
    [1, 1, 2, 2, 3, 4],
    "Bare",
  ],
  ["own unevenness in beds", "COMPAREMANY", plants, ways, null, [1, 1, 2, 2], "Bare", "own unevenness"],
];

function many(count: number): readonly number[] {
  return Array.from({ length: count }, (_, at) => at + 1);
}

const refusals = [...shared, ...amounts, ...options, ...percents, ...layouts];

function written(given: unknown): string {
  if (given === null) return "";
  if (typeof given === "object" && "address" in given && "cells" in given) {
    return `${String(given.address)}=${written(given.cells)}`;
  }
  return Array.isArray(given) ? `{${given.map(written).join("; ")}}` : JSON.stringify(given);
}

it("every refusal of METHODS 4 and 8, as a grower reads it", async () => {
  const text = refusals.map(([what, id, ...given]) => {
    const { code, message } = refused(id, ...given);
    return `${what}\n  =${id}(${given.map(written).join(", ")})\n  ${code} ${message}`;
  });
  await expect(`${text.join("\n\n")}\n`).toMatchFileSnapshot("approved/refusals.txt");
});

it("each has an error value that can carry a sentence, and short sentences", () => {
  for (const [what, id, ...given] of refusals) {
    const { code, message } = refused(id, ...given);
    const due = /^(no usable|all lost|usual)/.test(what);
    expect(code, what).toBe(due ? "#N/A" : "#VALUE!");
    expect(message, what).toMatch(/^\S.*[.?]$/);
    if (/These can:/.test(message)) continue;
    for (const sentence of message.split(/(?<=[.?]) /))
      expect(sentence.split(" ").length, what).toBeLessThanOrEqual(25);
  }
});

it("an unknown show lists everything that can be shown, treatments too, and each of it can", () => {
  const labelled = [[4, 5, 6, 5.5], null, ["Straw", "Straw", "Bare", "Bare"]];
  const { message } = refused("UNEVENNESS", labelled[0], "Strw", labelled[2]);
  const shows = message.replace(/^.*: /, "").slice(0, -1).split("; ");
  expect(shows).toEqual(
    expect.arrayContaining(["answer", "table", "words", "say", "cautions", "plan with", "Bare", "All"]),
  );
  for (const show of shows) expect(() => refused("UNEVENNESS", labelled[0], show, labelled[2])).toThrow(/not refused/);
});

it("refuses through Excel's own error where its runtime has one", () => {
  function ExcelError(this: { code: string; message: string }, code: string, message: string) {
    Object.assign(this, { code, message, excel: true });
  }
  const runtime = globalThis as unknown as { CustomFunctions: Record<string, unknown> };
  runtime.CustomFunctions.Error = ExcelError;
  try {
    expect(refused("UPDOWN", 0, 7)).toMatchObject({ code: "#N/A" });
  } finally {
    delete runtime.CustomFunctions.Error;
  }
});

it("#N/A says that data are missing, #VALUE! that the call is wrong", () => {
  const due: readonly Problem["problem"][] = ["no-usable-plants", "usual-zero", "all-lost"];
  for (const problem of due) expect(problemCode({ problem } as Problem)).toBe("#N/A");
});
