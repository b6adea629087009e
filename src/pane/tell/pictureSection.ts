import type { Report } from "../../nouns/report";
import { amountText } from "../../words/amount";
import { button, section } from "../dom/blocks";
import { element } from "../dom/element";
import { barsPicture } from "../plots/bars";
import { draw } from "../plots/draw";
import type { Picture } from "../plots/picture";
import { pictureOf } from "../plots/pictureOf";
import { projector, type Shown } from "./projector";
import type { Result } from "./results";
import { savePicture } from "./savePicture";

/** The picture of the first result, to be shown big or saved; null where there is none. */
export function pictureSection(report: Report, [first]: readonly Result[]): HTMLElement | null {
  const picture = first === undefined ? null : (pictureOf(first.finding) ?? averagesPicture(report));
  if (picture === null) return null;
  const shown: Shown = { title: report.title, picture, says: saysOf(report) };
  const told = element("p", { class: "hint", role: "status" });
  const big = button("Show it big", () => projector(shown, big));
  const save = button("Save the picture", () => void saved());
  return section("Picture", [draw(picture).root, element("div", { class: "buttons" }, big, save), told]);

  async function saved(): Promise<void> {
    const name = await savePicture(shown, save);
    told.textContent = name === null ? "This browser could not make the picture." : `Saved as ${name}.`;
  }
}

function averagesPicture({ results: [first] }: Report): Picture | null {
  if (first === undefined || first.bars.length === 0) return null;
  const bars = first.bars.map(({ name, average, usual }) => ({
    name,
    value: average,
    text: amountText(average, first.unit),
    look: usual ? ("usual" as const) : ("new" as const),
  }));
  return barsPicture(bars, "The averages per plant", "Each bar is an average per plant.");
}

/** The line to repeat, and that of place and season. */
function saysOf({ results: [first], couldFool }: Report): readonly string[] {
  const [season = ""] = (couldFool.at(-1) ?? "").split(/(?<=\.)\s/);
  return [...(first?.say ?? []), season].filter((sentence) => sentence !== "");
}
