import { draw } from "../../../src/pane/plots/draw";
import type { Picture } from "../../../src/pane/plots/picture";

/** A picture as the page holds it, one element a line: to be read and approved. */
export function svgText(picture: Picture | null): string {
  if (picture === null) return "no picture\n";
  const numbered = draw(picture).root.outerHTML.replaceAll(/fairbed-\d+/g, "ID");
  return `${numbered.replaceAll("><", ">\n<")}\n`;
}
