import { expect, it } from "vitest";
import { startsWithDate, stripDates } from "../../src/ranges/datesInNote";

it.each([
  ["14 july (slugs)", "14 july"],
  ["14th of july 2023", "14th of july 2023"],
  ["july 14th, 2023 to frost", "july 14th, 2023"],
  ["sept 2023", "sept 2023"],
  ["2023-07-14", "2023-07-14"],
  ["14/7", "14/7"],
  ["14.7. early", "14.7."],
  ["3rd", "3rd"],
])("startsWithDate of %j is %j", (note, date) => {
  expect(startsWithDate(note)).toBe(date);
});

it.each(["32 july", "1.5 kg", "14", "2 fruit", "maybe", "2023", "14/7b", "2023-13-01"])(
  "startsWithDate finds no date at the start of %j",
  (note) => {
    expect(startsWithDate(note)).toBeNull();
  },
);

it("stripDates leaves the amounts", () => {
  expect(stripDates("lost 14 july, 310 g").match(/\d+/g)).toEqual(["310"]);
  expect(stripDates("on 3/7 and the 14th").match(/\d/g)).toBeNull();
});

it("stripDates takes out the date and puts nothing in its place", () => {
  expect(stripDates("lost 14 july, 310 g")).toBe("lost , 310 g");
});
