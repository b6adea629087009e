import { svgElement } from "../dom/element";
import type { Picture, Spot } from "./picture";

/** What the dots report. */
export interface Listeners {
  /** A dot was pressed. */
  readonly follow: (key: string) => void;
  /** A dot has the attention, or none. */
  readonly say: (label: string | null) => void;
}

/** The dots of a picture that can be reached. */
export interface Spots {
  readonly root: SVGGElement;
  /** Lights up one dot, or none. */
  readonly light: (key: string | null) => void;
  /** Makes the dots answer to pointer and keys within an element of the page. */
  readonly listen: (frame: HTMLElement) => void;
}

const steps: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** Draws them as one stop of the Tab key; arrow keys go from dot to dot, Enter and Space press one. */
export function drawSpots(spots: Picture["spots"], { follow, say }: Listeners): Spots {
  const dots = spots.map((spot, at) => drawSpot(spot, at === 0));
  const placeOf = new Map<EventTarget | null, number>(dots.map((dot, at) => [dot, at]));
  let lit: string | null = null;
  return { root: svgElement("g", {}, ...dots), light, listen };

  function spotOf(target: EventTarget | null): Spot | undefined {
    return spots[placeOf.get(target) ?? -1];
  }

  function sayLit(): void {
    say(spots.find(({ key }) => key === lit)?.label ?? null);
  }

  function light(key: string | null): void {
    lit = key;
    for (const [at, dot] of dots.entries()) dot.classList.toggle("lit", spots[at]?.key === key);
    sayLit();
  }

  /** On the frame: a drawing's element that listens for focus becomes a stop of the Tab key itself. */
  function listen(frame: HTMLElement): void {
    frame.addEventListener("focusin", ({ target }) => {
      for (const dot of dots) dot.setAttribute("tabindex", dot === target ? "0" : "-1");
      say(spotOf(target)?.label ?? null);
    });
    frame.addEventListener("pointerover", ({ target }) => say(spotOf(target)?.label ?? null));
    frame.addEventListener("focusout", sayLit);
    frame.addEventListener("pointerout", sayLit);
    frame.addEventListener("click", ({ target }) => press(target));
    frame.addEventListener("keydown", (event) => {
      if (event.key === "Enter" || event.key === " ") press(event.target);
      else if (!walk(event)) return;
      event.preventDefault();
    });
  }

  function press(target: EventTarget | null): void {
    const spot = spotOf(target);
    if (spot !== undefined) follow(spot.key);
  }

  function walk({ key, target }: KeyboardEvent): boolean {
    const step = steps[key];
    if (step === undefined) return false;
    const at = (placeOf.get(target) ?? 0) + step;
    dots[Math.min(Math.max(at, 0), dots.length - 1)]?.focus();
    return true;
  }
}

function drawSpot(spot: Spot, first: boolean): SVGElement {
  return svgElement("circle", {
    class: `spot ${spot.look}`,
    cx: spot.at[0],
    cy: spot.at[1],
    r: spot.radius,
    role: "button",
    "aria-label": spot.label,
    tabindex: first ? "0" : "-1",
  });
}
