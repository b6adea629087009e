import { expect, it } from "vitest";
import type { Selection, Sheet } from "../../src/host/sheet";
import { watch } from "../../src/pane/watch";
import { handMadeDesk } from "./handMadeDesk";
import { memorySheet } from "./memorySheet";

const at = (address: string): Selection => ({
  sheet: "Mulch",
  address,
  formula: "",
  formulaShown: "",
  value: null,
  numberFormat: "General",
});

it("an answer that comes late does not replace a newer one", async () => {
  const waiting: ((selection: Selection) => void)[] = [];
  const selection = () => new Promise<Selection>((resolve) => waiting.push(resolve));
  const sheet: Sheet = { ...memorySheet(handMadeDesk()), selection };
  const { watched, look } = watch(sheet);
  const second = look();
  waiting[1]?.(at("B2"));
  await second;
  waiting[0]?.(at("A1"));
  await Promise.resolve();
  expect(watched.get().selection?.address).toBe("B2");
});

it("keeps the last selection while the sheet refuses to tell", async () => {
  const sheet = memorySheet(handMadeDesk());
  const { watched, look } = watch(sheet);
  await look();
  const trouble = { trouble: "not-cells", where: "" } as const;
  sheet.refuse(trouble);
  await look();
  expect(watched.get()).toMatchObject({ selection: { address: "A1" }, trouble });
});
