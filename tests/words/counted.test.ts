import { expect, test } from "vitest";
import { counted } from "../../src/words/counted";

test("counted handles one and many, and a many of its own", () => {
  expect(counted(1, "plant")).toBe("1 plant");
  expect(counted(0, "plant")).toBe("0 plants");
  expect(counted(12000, "plant")).toBe("12 000 plants");
  expect(counted(2, "leaf", "leaves")).toBe("2 leaves");
});
