import { formulaCell, type NewCell, type NewSheet, numberCell, textCell } from "../../host/newSheet";
import { splitSentences } from "../../words/report/splitSentences";
import { unevenPlants } from "./unevenPlants";

/** A lesson about luck: plants treated alike, and two teams of them drawn by number. */
export interface Lesson {
  /** Plants in each team. */
  readonly each: number;
  /** Fractions. */
  readonly unevenness: number;
  readonly lead: number;
  readonly drawNumber: number;
  /** Whether the sheet comes with invented weights; else the class weighs its own plants. */
  readonly invented: boolean;
  /** What luck alone does, in words. */
  readonly says: string;
}

const draws = 20;
const widths = [84, 64, 56, 16, 104, 64, 16, 330, 120];

/** The sheet for a class: its plants, the team of each by the number in I2, and the leads of twenty other numbers. */
export function luckSheet(lesson: Lesson): NewSheet {
  const count = 2 * lesson.each;
  const weights = lesson.invented ? unevenPlants(count, lesson.unevenness, lesson.drawNumber) : [];
  const rows = Array.from({ length: count }, (_, at) => [textCell(`Plant ${at + 1}`), weightCell(weights[at])]);
  return {
    name: "Luck lesson",
    widths,
    blocks: [
      { address: "A1", rows: [["Plant", "Grams"].map(bold), ...rows] },
      { address: "C1", rows: [[bold("Team")], [formulaCell(`=FAIRBED.DRAWLOTS(2,${lesson.each},I2,"Treatment")`)]] },
      { address: "E1", rows: [["Draw number", "Lead"].map(bold), ...drawRows(lesson)] },
      { address: "H1", rows: questionRows(lesson) },
    ],
  };
}

function weightCell(grams: number | undefined): NewCell | null {
  return grams === undefined ? null : numberCell(grams);
}

/** The numbers 1 to 20, each with how far the leading of its two teams is ahead. */
function drawRows({ each }: Lesson): readonly (readonly NewCell[])[] {
  return Array.from({ length: draws }, (_, at) => {
    const dealt = `FAIRBED.DRAWLOTS(2,${each},E${at + 2},"Treatment")`;
    const team = (name: string) => `SUMPRODUCT((${dealt}="${name}")*B$2:B$${2 * each + 1})`;
    return [numberCell(at + 1), leadCell(each, team)];
  });
}

/** Before every plant is weighed there is no lead to tell. */
function leadCell(each: number, team: (name: string) => string): NewCell {
  const [one, other] = [team("A"), team("B")];
  const weighed = `COUNT(B$2:B$${2 * each + 1})=${2 * each}`;
  return formulaCell(`=IF(${weighed},MAX(${one},${other})/MIN(${one},${other})-1,"")`, { format: "0.0%" });
}

function questionRows({ each, lead, drawNumber, invented, says }: Lesson): readonly (readonly (NewCell | null)[])[] {
  const last = 2 * each + 1;
  const leads = `F2:F${draws + 1}`;
  const team = (name: string) => `SUMIF(C$2:C$${last},"${name}",B$2:B$${last})`;
  const todo = invented
    ? "The weights are invented, to show it today. Type your own over them."
    : "Treat all plants alike, weigh them on one day, and type the grams into column B.";
  return [
    [bold("Deal the plants yourself"), null],
    [textCell("Draw number: type any number"), numberCell(drawNumber)],
    [textCell("How far is the leading team ahead?"), leadCell(each, team)],
    [textCell("A lead that would impress you"), numberCell(lead, "0%")],
    [textCell(`How many of the ${draws} draws lead by that much?`), formulaCell(`=COUNTIF(${leads},">="&I4)`)],
    [textCell(`The widest lead of the ${draws}`), formulaCell(`=MAX(${leads})`, { format: "0.0%" })],
    [textCell("How uneven are these plants?"), formulaCell(`=FAIRBED.UNEVENNESS(B1:B${last})`, { format: "0.0%" })],
    [null, null],
    [textCell("Nothing was done to either team, yet one leads."), null],
    ...splitSentences(says).map((sentence) => [textCell(sentence), null]),
    [textCell(todo), null],
  ];
}

function bold(text: string): NewCell {
  return textCell(text, { bold: true });
}
