import { expect, it, vi } from "vitest";
import { isRefusal } from "../../src/answers/desk";
import { refusal, seal } from "../../src/answers/seal";
import { upDownFunction } from "../../src/answers/upDown";
import { range } from "../questions/range";

const { parameters, reply, id } = seal(upDownFunction);
const call = [range("usual", 24), range("new", 72)];

it("keeps id and parameters", () => {
  expect(id).toBe("UPDOWN");
  expect(parameters).toBe(upDownFunction.parameters);
});

it("answers with finding, lines, table, cell and explanation", () => {
  const answer = reply([...call, range("show", "short")]);
  if (isRefusal(answer)) throw new Error(answer.message);
  expect(answer.cell()).toEqual([["+200 % (3 times)"]]);
  expect(answer.table()[0]).toEqual(["Change", 2]);
  expect(answer.lines.map(({ label }) => label)).toEqual(["short", ...answer.table().map(([label]) => label)]);
  expect(answer.finding.finding).toBe("up-down");
  expect(answer.finding.finding).toBe("up-down");
});

it("names the first missing argument before it asks the question", () => {
  const ask = vi.fn(upDownFunction.ask);
  const refused = seal({ ...upDownFunction, ask }).reply([range("usual", 24), null, null]);
  expect(refused).toMatchObject({ code: "#VALUE!", problem: { problem: "missing-argument", argument: "new" } });
  expect(ask).not.toHaveBeenCalled();
});

it("a refusal carries code, sentence and problem", () => {
  const problem = { problem: "usual-zero", tried: 7 } as const;
  expect(refusal(problem)).toMatchObject({ code: "#N/A", problem, message: expect.stringContaining("new is 7") });
});
