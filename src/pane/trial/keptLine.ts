import { button } from "../dom/blocks";
import { element } from "../dom/element";

/** The line that says whether the notes are kept. */
export interface KeptLine {
  readonly root: HTMLElement;
  readonly kept: () => void;
  /** Says why they are not, and offers to try once more. */
  readonly failed: (why: string) => void;
}

/** @param retry is called when the grower wants to try once more */
export function keptLine(retry: () => void): KeptLine {
  const said = element("p", { class: "hint", role: "status" });
  const again = button("Try once more", retry, "small");
  again.hidden = true;
  return {
    root: element("div", { class: "kept" }, said, again),
    kept: () => say("Kept with this workbook.", false),
    failed: (why) => say(why, true),
  };

  function say(sentence: string, failed: boolean): void {
    said.textContent = sentence;
    again.hidden = !failed;
  }
}
