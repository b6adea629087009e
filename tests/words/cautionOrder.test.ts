import { expect, test } from "vitest";
import { orderCautions } from "../../src/words/cautionOrder";
import { typicalCautions } from "./typicalCautions";

test("orderCautions goes by METHODS 9.2's priorities, and place and season comes last", () => {
  const codes = orderCautions(typicalCautions).map(({ caution }) => caution);
  expect([...new Set(codes)]).toEqual(
    "C01 C02 C18 C05 C21 C13 C17 C31 C32 C35 C03 C04 C09 C11 C06 C10 C15 C22 C28 C29 C37 C38 C39 C07 C16 C20 C25 C27 C30 C34 C36 C14 C12".split(
      " ",
    ),
  );
});

test("orderCautions keeps all, and leaves the given list as it was", () => {
  const given = [{ caution: "C12" }, { caution: "C02" }] as const;
  expect(orderCautions(given)).toEqual([{ caution: "C02" }, { caution: "C12" }]);
  expect(given[0].caution).toBe("C12");
});
