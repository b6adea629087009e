import type { Answer } from "../../answers/desk";
import type { CautionLine, Explanation } from "../../nouns/explanation";
import type { Finding } from "../../nouns/finding";
import { isTellable } from "../../nouns/report";
import { explain } from "../../words/explain";
import { inMainMeasure } from "../../words/mainMeasure";
import { notesToSearch, safetyLines } from "../../words/safety";
import { openQuestions } from "../../words/trialQuestions";
import { withCautions } from "../../words/withCautions";
import { withTrial } from "../../words/withTrial";
import type { Context } from "../context";
import { folded, list, paragraphs, section } from "../dom/blocks";
import { copyButton } from "../dom/copyButton";
import { type Child, element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { goTo } from "../goTo";
import { bedsPicture } from "../plots/beds";
import { type Drawn, draw } from "../plots/draw";
import type { Picture } from "../plots/picture";
import { pictureOf } from "../plots/pictureOf";
import { plantKey } from "../plots/plants";
import { swapsPicture } from "../plots/swaps";
import { textsIn } from "../textsIn";
import { notes } from "./notes";
import { numbersPart } from "./numbersPart";
import { planningPicture } from "./planningPicture";
import { cellOf, type Seen, type Within } from "./seen";
import { treatmentsPart } from "./treatmentsPart";
import type { View } from "./view";
import { withinBeds } from "./withinBeds";

/** An answered call in plain words, part by part in the order of METHODS 9. */
export function explanationView(seen: Seen, answer: Answer, context: Context): View {
  const { finding } = answer;
  const told = toldOf(seen, finding);
  const follow = (picture: Picture | null) => (picture === null ? [] : [followed(picture, seen, context)]);
  const main = follow(pictureOf(finding) ?? planningPicture(finding, context.desk));
  const beds = follow(finding.finding === "many-treatments" ? bedsPicture(finding) : null);
  const numbers = numbersPart(seen, answer, context);
  const inBeds = withinBeds(seen, context);
  const root = element(
    "div",
    { class: "explanation" },
    element("p", { class: "finding" }, unbroken(told.finding)),
    ...notes(seen, context),
    ...main.map((drawn) => drawn.root),
    told.say === ""
      ? null
      : section("You can say", [element("p", { class: "say" }, unbroken(told.say))], copyButton(told.say, context)),
    told.compared === "" ? null : element("p", { class: "compared" }, unbroken(told.compared)),
    ...(finding.finding === "many-treatments" ? treatmentsPart(finding) : []),
    ...beds.map((drawn) => section("Bed by bed", [drawn.root])),
    inBeds.root,
    luckPart(told, answer),
    safetyPart(seen),
    lookOutPart(told.lookOutFor.filter(({ code }) => code !== "C11")),
    questionsLine(seen, finding),
    told.next.length === 0 ? null : section("Next", paragraphs(told.next)),
    numbers.root,
    told.workings.length === 0 ? null : folded("How it was worked out", () => paragraphs(told.workings)),
  );
  return {
    root,
    says: told.finding,
    isHeld: () => numbers.isHeld() || inBeds.isHeld(),
    follow: (lit) => {
      for (const drawn of [...main, ...beds]) drawn.light(lit === null ? null : plantKey(lit));
      numbers.refresh();
      inBeds.refresh();
    },
  };
}

/** The explanation with what the cell cannot know of: the sheet around it, and the trial's notes. */
function toldOf({ around, notes: trial }: Seen, finding: Finding): Explanation {
  if (!isTellable(finding)) return withCautions(explain(finding), around.cautions);
  const told = withCautions(explain(inMainMeasure(finding, trial)), around.cautions);
  return withTrial(told, finding, trial);
}

/** A picture on the page; pressing a dot selects its cell. */
function followed(picture: Picture, seen: Seen, context: Context): Drawn {
  return draw(picture, (key) => {
    const cell = cellOf(seen, placeOf(key));
    if (cell !== null) goTo(cell, context);
  });
}

function placeOf(key: string): Within {
  const [argument = "", row = "1", column = "1"] = key.split(":");
  return { argument, row: Number(row), column: Number(column) };
}

function luckPart({ luck }: Explanation, { finding }: Answer): Child {
  if (luck.length === 0) return null;
  const swaps =
    finding.finding === "two-treatments" && finding.usual.plants.length > 0 && finding.tried.plants.length > 0;
  const fold = swaps
    ? folded("See 100 label swaps", () => {
        const picture = swapsPicture(finding);
        return picture === null ? [] : [draw(picture).root];
      })
    : null;
  return section("Could it be luck?", [...paragraphs(luck), fold]);
}

/** Two cautions open, then the last line, which is that of place and season; the rest folded. */
function lookOutPart(cautions: readonly CautionLine[]): Child {
  if (cautions.length === 0) return null;
  const sentences = cautions.map(({ sentence }) => sentence);
  const rest = sentences.slice(2, -1);
  const open = [...sentences.slice(0, -1).slice(0, 2), ...sentences.slice(-1)];
  const more = rest.length === 0 ? null : folded(`${rest.length} more to look out for`, () => [list(rest)]);
  return section("Look out for", [list(open), more]);
}

/** The lines on safety that words in the cells or notes call for; they stand apart, as they change no result. */
function safetyPart({ asked, notes: trial }: Seen): Child {
  const cells = "ranges" in asked ? textsIn(asked.ranges) : [];
  const lines = safetyLines([...cells, ...notesToSearch(trial)]);
  return lines.length === 0 ? null : section("Safety", paragraphs(lines));
}

/** How far the trial's checklist is answered, where its answers could warn of something. */
function questionsLine({ notes: trial }: Seen, finding: Finding): Child {
  const open = isTellable(finding) && finding.finding !== "many-trials" ? openQuestions(trial) : "";
  return open === "" ? null : element("p", { class: "hint" }, open);
}
