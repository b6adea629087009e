import { expect, test } from "vitest";
import type { Caution } from "../../src/nouns/caution";
import { cautionLine } from "../../src/words/caution";
import { typicalCautions } from "./typicalCautions";

test("cautionLine gives every caution its approved sentence", async () => {
  const lines = typicalCautions
    .map((caution) => cautionLine(caution))
    .map(({ code, sentence }) => `${code}  ${sentence}`);
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("approved/cautions.txt");
});

test("every caution is among the approved ones, under its own code", () => {
  const codes: Readonly<Record<Caution["caution"], true>> = {
    C01: true,
    C02: true,
    C03: true,
    C04: true,
    C05: true,
    C06: true,
    C07: true,
    C09: true,
    C10: true,
    C11: true,
    C12: true,
    C13: true,
    C14: true,
    C15: true,
    C16: true,
    C17: true,
    C18: true,
    C20: true,
    C21: true,
    C22: true,
    C25: true,
    C27: true,
    C28: true,
    C29: true,
    C30: true,
    C31: true,
    C32: true,
    C34: true,
    C39: true,
    C38: true,
    C35: true,
    C36: true,
    C37: true,
  };
  expect(new Set(typicalCautions.map((caution) => cautionLine(caution).code))).toEqual(new Set(Object.keys(codes)));
});

test("no caution shows its code", () => {
  for (const caution of typicalCautions) expect(cautionLine(caution).sentence).not.toMatch(/\bC\d\d\b/);
});
