// @vitest-environment jsdom
import { expect, it } from "vitest";
import { draw } from "../../../src/pane/plots/draw";
import { plantsPicture } from "../../../src/pane/plots/plants";
import { group, strawFinding } from "../strawFinding";

function drawn(plants: number) {
  const amounts = Array.from({ length: plants / 2 }, (_, at) => 1000 + (at % 97));
  const finding = strawFinding({ usual: group("usual", null, amounts), tried: group("new", null, amounts) });
  const picture = plantsPicture(finding);
  if (picture === null) throw new Error("no picture");
  return draw(picture).root;
}

it("2000 plants have a dot each", () => {
  expect(drawn(2000).querySelectorAll(".spot")).toHaveLength(2000);
});

it("of more plants none is drawn, and the caption says so", () => {
  const root = drawn(2002);
  expect(root.querySelectorAll(".spot")).toHaveLength(0);
  expect(root.querySelectorAll(".average")).toHaveLength(2);
  expect(root.querySelector("figcaption")?.textContent).toMatch(/ There are too many plants for a dot each\.$/);
  expect(root.querySelector("svg")?.getAttribute("role")).toBe("img");
});
