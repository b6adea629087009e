import { createContext, Script } from "node:vm";
import { expect, it } from "vitest";
import { built } from "./built";
import { contract } from "./contract";

type Door = (...given: unknown[]) => unknown;

/** Runs the built functions where nothing exists but the language and CustomFunctions.associate. */
function associated(): Map<string, Door> {
  const doors = new Map<string, Door>();
  const context = createContext({
    CustomFunctions: {
      associate: (id: string, door: Door) => doors.set(id, door),
    },
  });
  new Script(built("functions.js"), { filename: "functions.js" }).runInContext(context);
  return doors;
}

it("the built functions need nothing but CustomFunctions.associate, and associate the contract's ids", () => {
  expect([...associated().keys()].sort()).toEqual(Object.keys(contract).sort());
});

it("UPDOWN there says that 24 to 72 is up 200 %", async () => {
  const answer = await associated().get("UPDOWN")?.([[24]], [[72]], null, null, {});
  expect(JSON.stringify(answer)).toBe("[[2]]");
});

it("the functions' file holds no spreadsheet, no pane and no page", () => {
  for (const stranger of ["react", "univer", "rxjs", "createElement", "webpackChunk"]) {
    expect(built("functions.js")).not.toContain(stranger);
  }
});
