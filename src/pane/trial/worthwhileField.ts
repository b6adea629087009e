import { field } from "../dom/blocks";
import { element } from "../dom/element";

/** The field for the smallest change worth acting on, typed in percent. */
export interface WorthwhileField {
  readonly root: HTMLElement;
  /** As a fraction; null while nothing usable stands in it. */
  readonly value: () => number | null;
  readonly show: (worthwhile: number | null) => void;
}

const limits = { min: -99, max: 499 };
const hint = "Below 0 where less is wanted, as −10 for fewer slugs.";

/** The field, empty at the start; what it cannot take is marked and said below it. */
export function worthwhileField(): WorthwhileField {
  const input = element("input", { type: "number", ...limits, step: "any", inputmode: "numeric", placeholder: "10" });
  const told = element("span", {}, hint);
  input.addEventListener("input", () => mark(value() === null && !isEmpty()));
  return { root: field("Change worth acting on, in %", input, told), value, show };

  function value(): number | null {
    const percent = isEmpty() ? Number.NaN : input.valueAsNumber;
    const fits = percent >= limits.min && percent <= limits.max && percent !== 0;
    // As a cell reads it: 7 % is 0.07, not 0.07000000000000001.
    return fits ? Number(`${percent}e-2`) : null;
  }

  function show(worthwhile: number | null): void {
    if (value() === worthwhile) return;
    input.value = worthwhile === null ? "" : String(Number((worthwhile * 100).toPrecision(12)));
    mark(false);
  }

  /** True for an empty field only: text that is no number has no value either. */
  function isEmpty(): boolean {
    return input.value === "" && !input.validity.badInput;
  }

  function mark(wrong: boolean): void {
    input.setAttribute("aria-invalid", String(wrong));
    told.textContent = wrong ? "Not kept yet: type a number from −99 to 499 that is not 0." : hint;
  }
}
