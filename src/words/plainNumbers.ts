import type { Told } from "../nouns/explanation";
import type { PlainNumbers } from "../nouns/findings/plainNumbers";
import { counted } from "./counted";
import { unitName } from "./notPlain";
import { sentences } from "./sentences";

/** PLAINNUMBER's finding as the pane tells it: a cell shows the numbers themselves. */
export function tellPlainNumbers(found: PlainNumbers): Told {
  return { finding: () => finding(found), say: () => "" };
}

function finding({ cells, numbers, unit }: PlainNumbers): string {
  const all = cells.flat();
  const refused = all.filter(({ is }) => is === "refused").length;
  const read = `${counted(numbers, "number")} read as ${unitName(unit)}, from ${counted(all.length, "cell")}.`;
  return sentences(read, refused === 0 ? "" : `${counted(refused, "cell")} could not be read.`);
}
