import { element } from "../dom/element";
import { draw } from "../plots/draw";
import type { Shown } from "./projector";
import { wrapped } from "./wrapped";

/** A projector's own size, in pixels. */
const size = { width: 1920, height: 1080 } as const;
const margin = 80;
const lettering = { title: 60, says: 40, caption: 28 } as const;
const fonts = '"Segoe UI", system-ui, sans-serif';

/**
 * Saves a picture, its title and its sentences as an image of 1920 × 1080 pixels among the browser's downloads.
 *
 * @param near an element of the page, beside which the picture is drawn unseen
 * @returns the file's name; null where the browser cannot make the image
 */
export async function savePicture(shown: Shown, near: HTMLElement): Promise<string | null> {
  const canvas = element("canvas", size);
  const brush = canvas.getContext("2d");
  if (brush === null) return null;
  try {
    await paint(brush, shown, near);
  } catch {
    return null;
  }
  const name = `${fileName(shown.title)}.png`;
  element("a", { href: canvas.toDataURL("image/png"), download: name }).click();
  return name;
}

function fileName(title: string): string {
  const plain = title.replace(/[^\p{L}\p{N}]+/gu, " ").trim();
  return plain.slice(0, 60).trim() || "Trial";
}

async function paint(brush: CanvasRenderingContext2D, { title, picture, says }: Shown, near: HTMLElement) {
  const { image, ink } = await imageOf(picture, near);
  brush.fillStyle = "#ffffff";
  brush.fillRect(0, 0, size.width, size.height);
  brush.fillStyle = ink;
  const top = write(brush, [title], { at: margin, letters: lettering.title, weight: 600 });
  const lines = says.flatMap((sentence) => linesOf(brush, sentence, { letters: lettering.says, weight: 400 }));
  const bottom = size.height - margin / 2 - lines.length * lettering.says * 1.3;
  write(brush, lines, { at: bottom, letters: lettering.says, weight: 400 });
  const below = bottom - lettering.caption * 2;
  write(brush, [picture.caption], { at: below, letters: lettering.caption, weight: 400 });
  const [wide, high] = [size.width - 2 * margin, below - top - margin / 2];
  const times = Math.min(wide / picture.width, high / picture.height);
  const [width, height] = [picture.width * times, picture.height * times];
  brush.drawImage(image, (size.width - width) / 2, top + (high - height) / 2, width, height);
}

interface Lettering {
  readonly letters: number;
  readonly weight: number;
}

/** Writes texts below each other, broken into lines; answers where the next would stand. */
function write(
  brush: CanvasRenderingContext2D,
  texts: readonly string[],
  { at, ...look }: Lettering & { readonly at: number },
): number {
  const lines = texts.flatMap((text) => linesOf(brush, text, look));
  brush.textBaseline = "top";
  for (const [index, line] of lines.entries()) brush.fillText(line, margin, at + index * look.letters * 1.3);
  return at + lines.length * look.letters * 1.3;
}

function linesOf(brush: CanvasRenderingContext2D, text: string, { letters, weight }: Lettering): readonly string[] {
  brush.font = `${weight} ${letters}px ${fonts}`;
  return wrapped(text, (line) => brush.measureText(line).width <= size.width - 2 * margin);
}

/** What a drawing's marks look like comes from the page's style sheet, which an image of its own does not have. */
const looks = [
  "fill",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "font-family",
  "font-size",
  "font-weight",
  "paint-order",
];

/** The drawing as an image by itself, in the light colours, and the colour that its page writes in. */
async function imageOf(picture: Shown["picture"], near: HTMLElement) {
  const stage = element("div", { class: "fairbed unseen", "data-theme": "light", "aria-hidden": "true" });
  stage.append(draw(picture).root);
  near.after(stage);
  const { color: ink } = getComputedStyle(stage);
  const svg = stage.querySelector("svg");
  for (const mark of svg?.querySelectorAll<SVGElement>("*") ?? []) {
    const style = getComputedStyle(mark);
    for (const look of looks) mark.setAttribute(look, style.getPropertyValue(look));
  }
  svg?.setAttribute("width", String(size.width));
  svg?.setAttribute("height", String((size.width * picture.height) / picture.width));
  const source = new XMLSerializer().serializeToString(svg ?? stage);
  stage.remove();
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(source)}`;
  await image.decode();
  return { image, ink };
}
