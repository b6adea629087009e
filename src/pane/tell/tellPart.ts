import type { Context } from "../context";
import type { Part } from "../dom/tabs";
import { latePart } from "../latePart";

/** The part of the pane that tells results to an audience. */
export function tellPart(context: Context): Part {
  return latePart("Tell", async () => {
    const { tell } = await import("./tell");
    return (root) => tell(context, root);
  });
}
