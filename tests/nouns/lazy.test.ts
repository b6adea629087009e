import { expect, it } from "vitest";
import { lazy } from "../../src/nouns/lazy";

it("works a fact out when it is first asked for, and once only", () => {
  let workings = 0;
  const fact = lazy(() => {
    workings += 1;
    return "known";
  });
  expect(workings).toBe(0);
  expect([fact(), fact()]).toEqual(["known", "known"]);
  expect(workings).toBe(1);
});

it("remembers that there is nothing", () => {
  let workings = 0;
  const nothing = lazy(() => {
    workings += 1;
    return undefined;
  });
  expect([nothing(), nothing()]).toEqual([undefined, undefined]);
  expect(workings).toBe(1);
});
