import { expect, it } from "vitest";
import { reportOf } from "../../../src/words/report/reportOf";
import { talk } from "../../../src/words/report/talk";
import { reportFrom, telling } from "./tellable";

it("has nothing but the question to say before there is a result", () => {
  const report = reportOf(telling([], { question: "Does straw help?" }));
  expect(talk({ ...report, laidOut: [], couldFool: [], safety: [] })).toBe("Does straw help?");
});

it("says between question and finding how the first result was compared", () => {
  const report = reportFrom(["MANYTRIALS six crops"]);
  const [result] = report.results;
  const [opening = "", found = ""] = talk({ ...report, laidOut: [] }).split("\n\n");
  expect(opening).toBe([report.question, ...(result?.compared ?? [])].join(" "));
  expect(found).toBe(result?.finding.join(" "));
});
