import { afterEach, expect, it } from "vitest";
import { formatsShown, formatsShownWhen } from "../../src/host/formats";

const session = globalThis as { [key: symbol]: unknown };
const note = Symbol.for("fairbed.formats");

afterEach(() => {
  delete session[note];
  formatsShownWhen(() => false);
});

it("no host is taken to show formats unless it says so", () => {
  expect(formatsShown()).toBe(false);
});

it("a host that is asked at each call may come to show them later", () => {
  let shows = false;
  formatsShownWhen(() => shows);
  expect(formatsShown()).toBe(false);
  shows = true;
  expect(formatsShown()).toBe(true);
});

it("a context that runs the functions alone says it by a note", () => {
  session[note] = "shown";
  expect(formatsShown()).toBe(true);
});
