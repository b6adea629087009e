import { expect, it } from "vitest";
import { theDesk } from "../../src/answers/theDesk";
import { doors } from "../../src/functions/doors";
import { range } from "../questions/range";

it.each(Object.entries(doors))("%s has a door with as many parameters, and the invocation last", (id, door) => {
  expect(door.length).toBe((theDesk.parameters(id)?.length ?? 0) + 1);
});

it("knows the parameters by name, show right after the required ones", () => {
  const names = theDesk.parameters("COMPARETWO")?.map(({ name, optional }) => (optional ? `[${name}]` : name));
  expect(names).toEqual(["usual", "new", "[show]", "[how]", "[worthwhile]", "[confidence]", "[lost_plants]"]);
});

it("does not know other functions; asking one is a programmer's mistake", () => {
  expect(theDesk.parameters("WEIGHBRIDGE")).toBeNull();
  expect(() => theDesk.ask("WEIGHBRIDGE", [range("cells", 1)])).toThrow("no such function: WEIGHBRIDGE");
});
