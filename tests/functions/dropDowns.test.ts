import { describe, expect, it } from "vitest";
import { dropDowns } from "../../.build/dropDowns.js";
import { isRefusal } from "../../src/answers/desk";
import { theDesk } from "../../src/answers/theDesk";
import { toCellRange } from "../../src/ranges/toCellRange";
import { contract } from "../platform/contract";
import { column } from "./call";

const nine = column([4, 5, 6, 7, 8, 9, 5, 6, 8]);
const mulches = column(["Bare", "Bare", "Bare", "Straw", "Straw", "Straw", "Paper", "Paper", "Paper"]);

const days = column([1, 2, 3, 1, 2, 3, 1, 2, 3].map((day) => `2023-07-0${day}`));

/** The data of one call of each function that has an answer. */
const answered: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  UPDOWN: { usual: 24, new: 72 },
  PERPLANT: { amounts: nine },
  UNEVENNESS: { amounts: nine },
  COMPARETWO: { usual: nine, new: nine },
  COMPAREMANY: { amounts: nine, treatments: mulches, usual: "Bare" },
  WORTHIT: { usual: nine, new: nine, price: 2, extra_cost: 1 },
  MANYTRIALS: { usual_averages: nine, new_averages: nine },
  TOTALSONLY: { usual_total: 412, usual_plants: 30, new_total: 655, new_plants: 30 },
  PLANTSNEEDED: { change: 0.3, unevenness: 0.4 },
  SMALLESTCHANGE: { plants_each: 8, unevenness: 0.4 },
  CHANCETOSEE: { change: 0.3, plants_each: 8, unevenness: 0.4 },
  DRAWLOTS: { treatments: 3, plants_each: 4, draw_number: 1431 },
  TALLYPICKS: { plants: mulches, amounts: nine },
  PICKCURVE: { treatments: mulches, dates: days, amounts: nine },
  HALFPICKED: { plants: mulches, dates: days, amounts: nine },
  LOOKOVER: { cells: nine },
  PLAINNUMBER: { cells: nine },
};
/** Names of rows, which are the grower's own words. */
const ownNames = ["Bare", "Straw", "Paper", "Treatment 1", "All"];

/** What the function says can be typed there, when something else is. */
function allowed(id: string, argument: string): readonly string[] {
  const given = (theDesk.parameters(id) ?? []).map(({ name }) => {
    const value = name === argument ? "no such word" : (answered[id]?.[name] ?? null);
    return value === null ? null : toCellRange(name, value, { zerosVerified: true });
  });
  const reply = theDesk.ask(id, given);
  if (!isRefusal(reply) || !("allowed" in reply.problem)) throw new Error(`${id} took “no such word”`);
  return reply.problem.allowed.filter((word) => !ownNames.includes(word));
}

/** Taken though not offered (METHODS 8.4 and 8.5): who needs them knows their names. */
const notOffered: Readonly<Record<string, readonly string[]>> = {
  "COMPARETWO how": ["equal unevenness", "ranks", "pairs ranks"],
  "COMPAREMANY how": ["own unevenness"],
};

const lists = Object.entries(dropDowns).flatMap(([id, words]) =>
  Object.entries(words).map(([argument, list]) => [id, argument, list] as const),
);

it("every argument that takes words has a list", () => {
  const wordy = Object.entries(contract).flatMap(([id, parameters]) =>
    parameters.split(" ").flatMap((parameter) => {
      const name = parameter.replace("?", "");
      return ["show", "how", "direction", "lost_plants", "kind", "unit"].includes(name) ? [`${id} ${name}`] : [];
    }),
  );
  expect(lists.map(([id, argument]) => `${id} ${argument}`).sort()).toEqual(wordy.sort());
});

describe.each(lists)("%s, %s", (id, argument, list) => {
  // "Cautions" and "Letters" are labels too; the standing word gives the same or the fuller answer.
  it("offers each word that the function takes, once", () => {
    const words = allowed(id, argument).map((word) => word.toLowerCase());
    const all = [...list.map((word) => word.toLowerCase()), ...(notOffered[`${id} ${argument}`] ?? [])];
    expect(all.sort()).toEqual([...new Set(words)].sort());
  });
});
