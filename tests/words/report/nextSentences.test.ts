import { expect, it } from "vitest";
import { nextSentences } from "../../../src/words/report/nextSentences";
import { against, manyTreatments, treatment } from "../manyRecords";

/** Two treatments that both fell, the one with the higher average first. */
const both = (lessWanted: boolean, verdict: "up-enough" | "down-enough") =>
  manyTreatments({
    usual: "bare",
    worthwhile: { size: 0.1, lessWanted, given: true },
    treatments: ["straw", "bark"].map((name, at) =>
      treatment({
        name,
        plants: 8,
        mean: 5 - at,
        againstUsual: against({ change: 0.5, changeRange: { low: 0.2, high: 0.9 }, verdict }),
      }),
    ),
  });

it("tries the highest once more, and the lowest where less is wanted", () => {
  expect(nextSentences(both(false, "up-enough"))).toEqual(["Try straw against bare once more, with more plants."]);
  expect(nextSentences(both(true, "down-enough"))).toEqual(["Try bark against bare once more, with more plants."]);
});
