import { expect, it } from "vitest";
import { totalsOnly } from "../../src/questions/totalsOnly";
import { totalsOnlySays } from "../../src/words/totalsOnlySays";
import { found, given } from "../questions/range";

const says = (...[usual_total, usual_plants, new_total, new_plants, unevenness = 0.35]: readonly number[]) =>
  totalsOnlySays(
    found(
      totalsOnly(given({ usual_total, usual_plants, new_total, new_plants, unevenness } as Record<string, number>)),
    ),
  );

it.each([
  [[412, 30, 655, 30], "Real if plants vary by less than 92 %; at 35 % the change may be +33 % to +90 %."],
  [[412, 30, 655, 30, 0.2], "Real if plants vary by less than 92 %; at 20 % the change may be +41 % to +80 %."],
  [[100, 10, 50, 5], "Level per plant; at 35 % the change may be −31 % to +46 %."],
  [[655, 30, 640, 29], "Not settled even if all plants were alike; at 35 % the change may be −15 % to +21 %."],
  [[0, 2, 5, 2], "5 from 2 plants and 0 from 2: at least 0.91 times as many."],
  [[0, 2, 0.5, 1], "0.5 from 1 plant and 0 from 2: weights give no more than that."],
  [[0, 2, 0, 2], "No answer: both totals are 0"],
])("%j: %s", (call, sentence) => {
  expect(says(...call)).toBe(sentence);
});
