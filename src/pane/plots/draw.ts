import { freshId } from "../dom/blocks";
import { element, svgElement } from "../dom/element";
import { drawSpots, type Spots } from "./drawSpots";
import type { Mark, Picture, Point } from "./picture";

/** A picture on the page. */
export interface Drawn {
  readonly root: HTMLElement;
  /** Lights up the dot of a cell, or none. */
  readonly light: (key: string | null) => void;
}

/** More dots than this cover each other, and make a page slow. */
const mostSpots = 2000;

/**
 * Draws a picture, with its caption below it and its facts for screen readers.
 *
 * @param follow is called with a dot's key when the grower presses it
 */
export function draw(picture: Picture, follow: (key: string) => void = () => {}): Drawn {
  const { width, height } = picture;
  const isCrowded = picture.spots.length > mostSpots;
  const caption = isCrowded ? `${picture.caption} There are too many plants for a dot each.` : picture.caption;
  const reached = isCrowded ? [] : picture.spots;
  const below = element("figcaption", {}, caption);
  const spots: Spots = drawSpots(reached, {
    follow,
    say: (label) => {
      below.textContent = label ?? caption;
    },
  });
  const title = svgElement("title", { id: freshId() }, picture.title);
  const description = svgElement("desc", { id: freshId() }, picture.facts.join(" "));
  const svg = svgElement(
    "svg",
    {
      viewBox: `0 0 ${width} ${height}`,
      role: reached.length > 0 ? "group" : "img",
      "aria-labelledby": title.id,
      "aria-describedby": description.id,
    },
    title,
    description,
    svgElement("g", { "aria-hidden": "true" }, ...picture.marks.map(drawMark)),
    spots.root,
  );
  const facts = element("ul", { class: "unseen" }, ...picture.facts.map((fact) => element("li", {}, fact)));
  const frame = element("div", { class: "frame" }, svg);
  if (reached.length > 0) spots.listen(frame);
  return { root: element("figure", { class: "picture" }, frame, below, facts), light: spots.light };
}

function drawMark(mark: Mark): SVGElement {
  switch (mark.mark) {
    case "line":
      return svgElement("polyline", { class: mark.look, points: mark.points.map(pair).join(" ") });
    case "dot":
      return svgElement("circle", { class: mark.look, cx: mark.at[0], cy: mark.at[1], r: mark.radius });
    case "box": {
      const [[x, y], [right, bottom]] = [mark.from, mark.to];
      return svgElement("rect", { class: mark.look, x, y, width: right - x, height: bottom - y });
    }
    case "text":
      return svgElement(
        "text",
        { class: mark.look, x: mark.at[0], y: mark.at[1], "text-anchor": mark.anchor },
        mark.text,
      );
  }
}

function pair([x, y]: Point): string {
  return `${x},${y}`;
}
