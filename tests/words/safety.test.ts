import { expect, test } from "vitest";
import { blankNotes } from "../../src/nouns/trialNotes";
import { notesToSearch, safetyLines } from "../../src/words/safety";
import { neverSay, readingGrade, sentencesOf, wordsOf } from "./plainEnglish";

// METHODS 7: the trigger words of each line, and its false friends.
const label =
  "spray|pesticide|insecticide|fungicide|herbicide|weedkiller|weed killer|feed|fertiliser|fertilizer|fertilise|dose|double rate|×2|slug pellets|neem|soap|chelated";
const manure =
  "manure|muck|dung|droppings|slurry|guano|compost tea|litter|biosolid|humanure|urine|chicken pellets|nettle tea";
const material = "tyres|tires|creosote|sleepers|pressure-treated wood|treated wood|unknown sludge|ash|coal";
const first = { label: "Follow the product label", manure: "Raw manure can carry", material: "Ask your extension" };
const askThere = "For advice that costs money or affects health";

const triggers = Object.entries({ label, manure, material }).flatMap(([line, words]) =>
  words.split("|").map((word) => [word, first[line as keyof typeof first]] as const),
);

test.each(triggers)("%s calls for its line, and for where to ask", (word, start) => {
  for (const text of [word, word.toUpperCase(), `Straw, ${word}`, `${word} (twice)`, `old ${word}, then rain`]) {
    const lines = safetyLines([text]);
    expect(
      lines.map((line) => line.startsWith(start) || line.startsWith(askThere)),
      text,
    ).toEqual([true, true]);
  }
});

const plurals =
  "sprays|sprayed|spraying|pesticides|feeds|feeding|fertilisers|doses|dosing|double-rate|feed ×2|slug pellet|soaps|manures|manured|dropping|slurries|compost teas|compost-tea|nettle  teas|chicken pellet|tyre|tire|sleeper|railway sleepers|pressure treated|treated timber|ashes|wood ash|Coals";

test.each(plurals.split("|"))("%s is seen as well, in its other form", (text) => {
  expect(safetyLines([text])).toHaveLength(2);
});

const harmless =
  "squash|Ashford|cash|charcoal|green manure|Green manures|green-manure, leaf litter|leaf litter|bird feeder|feeder|feedback|tired|retired|entire|dungarees|soapwort|mucky|glitter|coleslaw|doser|neembright|×20|12×|3×2|2 × 3 m|3 × 2 m|rate|double|compost|tea|nettles|pellets|chicken|wood|treated|pressure|sludgy|Straw|Bare soil|";

test.each(harmless.split("|"))("“%s” calls for nothing", (text) => {
  expect(safetyLines([text])).toEqual([]);
});

test("a false friend does not hide a true one beside it", () => {
  expect(safetyLines(["green manure, then horse manure"])).toHaveLength(2);
  expect(safetyLines(["leaf litter; leaf litter; poultry litter"])).toHaveLength(2);
});

test("of the notes, what was grown and measured is searched, not what the place is called", () => {
  const notes = { ...blankNotes, crop: "squash", measure: "harvest", place: "Ash Farm", season: "muck year" };
  expect(safetyLines(notesToSearch(notes))).toEqual([]);
  expect(safetyLines(notesToSearch({ ...notes, measure: "harvest after spraying" }))).toHaveLength(2);
});

test("each line comes once, in METHODS' order, and where to ask comes last", () => {
  const lines = safetyLines(["Ash", "Nettle tea", "feed", "Soap", "manure"]);
  expect(lines.map((line) => line.split(" ").slice(0, 2).join(" "))).toEqual([
    "Follow the",
    "Raw manure",
    "Ask your",
    "For advice",
  ]);
});

test("the lines as approved: plain, short, claiming nothing", async () => {
  const lines = safetyLines(["feed", "manure", "ash"]);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("approved/safety.txt");
  for (const line of lines) {
    expect(sentencesOf(line).filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
    expect(neverSay.filter((claim) => claim.test(line))).toEqual([]);
  }
  expect(readingGrade(lines.join(" "))).toBeLessThanOrEqual(8);
});

test("texts so long that going back and forth in them would never end are read", () => {
  const long = "feed ".repeat(3).padEnd(200_000, "compost  ");
  expect(safetyLines([long, "a".repeat(200_000), " ".repeat(200_000)])).toEqual(safetyLines(["feed compost"]));
});
