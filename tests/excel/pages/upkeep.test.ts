import { expect, it } from "vitest";
import { change, contentOf, workbook } from "../host/workbook";
import { openInExcel } from "./openInExcel";

const formula = "=FAIRBED.UPDOWN(A1,A2)";
const cellB1 = { sheet: "Trial", row: 0, column: 1 };

it("the pane offers to enter formulas again that Excel did not know when the workbook was opened", async () => {
  const { excel, pane } = await openInExcel(
    "on the web",
    workbook({ Trial: [[24, "=_xldudf_FAIRBED_UPDOWN(A1,A2)"]] }),
  );
  await pane.getByText("1 cell shows #NAME? because the workbook was opened without Fairbed.").waitFor();
  await pane.getByRole("button", { name: "Enter them again" }).click();
  await pane.getByText("1 formula was entered again.").waitFor();
  expect(contentOf(excel.book, cellB1).formula).toBe(formula);
});

it("a cell is kept as text for a colleague, and its formula comes back", async () => {
  const { excel, pane } = await openInExcel("for Windows", workbook({ Trial: [[24, formula], [72]] }));
  change(excel.book, cellB1, { value: 2 });
  excel.select("B1");
  await pane.getByText("For colleagues without Fairbed").click();
  await pane.getByRole("button", { name: "Keep the selected cell as text" }).click();
  await pane.getByText("B1 holds plain text now").waitFor();
  expect(contentOf(excel.book, cellB1)).toMatchObject({ formula: "", value: 2 });
  await pane.getByRole("button", { name: "Bring the formula back" }).click();
  await pane.getByText("The formula is back in B1.").waitFor();
  expect(contentOf(excel.book, cellB1).formula).toBe(formula);
});

it("functions kept from an older version are told apart from the pane's own", async () => {
  const book = () => workbook({ Trial: [] });
  const note = "The functions and this pane come from different versions of Fairbed.";
  const { pane } = await openInExcel("for Windows", book());
  expect(await pane.getByText(note).count()).toBe(0);
  const { pane: older } = await openInExcel("for Windows", book(), (script) =>
    script.replace(/"\d+\.\d+\.\d+\+[0-9a-f]{8}"/, '"0.0.9+00000000"'),
  );
  expect(await older.getByText(note).count()).toBe(1);
});
