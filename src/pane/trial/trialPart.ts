import type { Context } from "../context";
import type { Part } from "../dom/tabs";
import { latePart } from "../latePart";

/** The part of the pane that asks what no number tells of a trial, and keeps it with the workbook. */
export function trialPart(context: Context): Part {
  return latePart("Trial", async () => {
    const { trial } = await import("./trial");
    return (root) => trial(context, root);
  });
}
