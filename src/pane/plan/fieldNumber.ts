import { field } from "../dom/blocks";
import { element } from "../dom/element";

/** A field for a whole number. */
export interface NumberField {
  readonly root: HTMLElement;
  /** Null while nothing usable stands in it. */
  readonly value: () => number | null;
  /** What to say while its value is missing. */
  readonly asks: string;
}

/** The number at the start, and the lowest and highest that are taken; 0 is not taken. */
export interface NumberLimits {
  readonly start: number;
  readonly low: number;
  readonly high: number;
}

/** The field with its label; it is marked as wrong while it is asked for its value and has none. */
export function fieldNumber(label: string, { start, low, high }: NumberLimits): NumberField {
  const input = element("input", { type: "number", min: low, max: high, step: 1, value: start, inputmode: "numeric" });
  return { root: field(label, input), value, asks: `${label}: type a whole number from ${low} to ${high}.` };

  function value(): number | null {
    const number = Number(input.value);
    const fits = Number.isInteger(number) && number !== 0 && number >= low && number <= high;
    input.setAttribute("aria-invalid", String(!fits));
    return fits ? number : null;
  }
}
