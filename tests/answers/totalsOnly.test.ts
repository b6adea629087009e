import { expect, it } from "vitest";
import { totalsOnlyFunction } from "../../src/answers/totalsOnly";
import { found, given } from "../questions/range";

// What each label holds is tested through the worksheet function, in tests/functions.
const call = given({ usual_total: 412, usual_plants: 30, new_total: 655, new_plants: 30 });

it("has METHODS' parameters, show right after the required ones", () => {
  const names = totalsOnlyFunction.parameters.map(({ name }) => name);
  expect(names.join(" ")).toBe("usual_total usual_plants new_total new_plants show unevenness measure");
  for (const argument of Object.keys(totalsOnlyFunction.choices)) expect(names).toContain(argument);
});

it("each figure has the format it is best shown with", () => {
  const { lines } = totalsOnlyFunction.shown(found(totalsOnlyFunction.ask(call)), call);
  const formats = "text amount amount percent percent percent percent percent percent text";
  expect(lines.map(({ format }) => format).join(" ")).toBe(formats);
});
