import { expect, it, vi } from "vitest";
import { figure, line } from "../../src/answers/figure";

it("a figure, or the text that says why there is none", () => {
  expect(figure(0)).toBe(0);
  expect(figure({ absent: "single-figures" })).toBe("one figure each: no range");
});

it("a line works its value out when asked for", () => {
  const value = vi.fn(() => ({ absent: "no-losses" }) as const);
  const shown = line("Loss p", "decimal", value);
  expect(value).not.toHaveBeenCalled();
  expect(shown).toMatchObject({ label: "Loss p", format: "decimal" });
  expect(shown.value()).toBe("no losses");
  expect(line("Method", "text", () => "by hand").value()).toBe("by hand");
});
