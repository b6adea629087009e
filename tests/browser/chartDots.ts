import type { Page } from "playwright-core";

/** Dots of the grid's picture in the colour of the new treatments' bars, and how far down the first of them is. */
export function chartDots(page: Page): Promise<{ readonly dots: number; readonly first: number }> {
  return page.evaluate(() => {
    const canvas = [...document.querySelectorAll("canvas")].sort((one, other) => other.width - one.width)[0];
    const { data = new Uint8ClampedArray(), width = 1 } =
      canvas?.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? {};
    const found: number[] = [];
    for (let at = 0; at < data.length; at += 4) {
      if (data[at] === 0x2d && data[at + 1] === 0x6a && data[at + 2] === 0x2e) found.push(Math.floor(at / 4 / width));
    }
    return { dots: found.length, first: found[0] ?? -1 };
  });
}
