import { ArrayValueObject, NumberValueObject, StringValueObject } from "@univerjs/engine-formula";
import { expect, it } from "vitest";
import { givenArgument } from "../../../../src/host/practice/functions/givenArgument";

// Arguments that are references need a running sheet: tests/browser/practiceEngine.test.ts.

it("givenArgument hands a typed value over as it is", () => {
  expect(givenArgument(StringValueObject.create("beds"))).toBe("beds");
  expect(givenArgument(NumberValueObject.create(0.3))).toBe(0.3);
});

it("givenArgument hands an array over as a block, with null where nothing is", () => {
  const array = ArrayValueObject.createByArray([
    [1, "lost"],
    [null, true],
  ]);
  expect(givenArgument(array)).toEqual([
    [1, "lost"],
    [null, true],
  ]);
});
