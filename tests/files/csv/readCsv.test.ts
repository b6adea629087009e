import { expect, it } from "vitest";
import { readCsv } from "../../../src/files/csv/readCsv";
import { answered } from "../answered";
import { sheetCells } from "../sheetCells";

function cells(text: string) {
  return sheetCells(answered(readCsv(new TextEncoder().encode(text), "Harvest")).sheets[0]);
}

it("reads numbers, days and texts", () => {
  expect(cells('bed,kg,when\r\n1,12.5,2026-05-03\n"2","a, ""b""\nc",2026-02-30\n007,,-1e3')).toEqual({
    A1: { value: "bed" },
    B1: { value: "kg" },
    C1: { value: "when" },
    A2: { value: 1 },
    B2: { value: 12.5 },
    // 46145 is the serial of 3 May 2026 in Excel.
    C2: { value: 46145, look: 1 },
    A3: { value: "2" },
    B3: { value: 'a, "b"\nc' },
    C3: { value: "2026-02-30" },
    A4: { value: "007" },
    C4: { value: -1000 },
  });
});

it("reads semicolons with decimal commas, and tabs", () => {
  expect(cells("bed;kg\n1;12,5")).toMatchObject({ A2: { value: 1 }, B2: { value: 12.5 } });
  expect(cells("bed\tkg\n1\t12.5")).toMatchObject({ A2: { value: 1 }, B2: { value: 12.5 } });
});

it("leaves a number that may be a thousand times larger as it is typed, to be listed as doubtful", () => {
  expect(cells("kg;g\n1.250;1,250\n12.5;-2.000\n0.250;1234.500")).toEqual({
    A1: { value: "kg" },
    B1: { value: "g" },
    A2: { value: "1.250" },
    B2: { value: 1.25 },
    A3: { value: 12.5 },
    B3: { value: "-2.000" },
    A4: { value: 0.25 },
    B4: { value: 1234.5 },
  });
  expect(cells("kg\tg\n1.250\t1,250")).toMatchObject({ A2: { value: 1.25 }, B2: { value: "1,250" } });
  expect(cells("kg,g\n1.250,7")).toMatchObject({ A2: { value: 1.25 } });
});

it("finds what parts the cells below a title, and past quotes", () => {
  expect(cells("Courgettes 2023\nbed;kg\n1;12,5")).toMatchObject({ B3: { value: 12.5 } });
  expect(cells('"a;b;c\n;",kg\n1,12.5')).toMatchObject({ A1: { value: "a;b;c\n;" }, B2: { value: 12.5 } });
  expect(cells("one\ntwo")).toEqual({ A1: { value: "one" }, A2: { value: "two" } });
});

it("reads a field of any length, closed or not, and every end of a row", () => {
  const long = "a".repeat(20_000_000);
  for (const end of ['"",7', ""]) {
    const { A1 } = cells(`"${long}${end}`);
    expect(A1?.value === long + end.replace('""', '"')).toBe(true);
  }
  expect(cells('"open, 1\n2')).toEqual({ A1: { value: "open, 1\n2" } });
  expect(cells('a\rb\n\nd,"x"y,\r\n')).toEqual({
    A1: { value: "a" },
    A2: { value: "b" },
    A4: { value: "d" },
    B4: { value: "xy" },
  });
});

it("makes no formula of any text", () => {
  const found = cells('=1+1,+1+1,-2+3,@SUM(A1),"=HYPERLINK(""http://x"")",\'=1+1');
  expect(Object.values(found)).toEqual(
    ["=1+1", "+1+1", "-2+3", "@SUM(A1)", '=HYPERLINK("http://x")', "=1+1"].map((value) => ({ value })),
  );
});

it("reads UTF-8 with its mark, and western letters of old", () => {
  expect(cells("\uFEFFbädd,1")).toMatchObject({ A1: { value: "bädd" } });
  const old = Uint8Array.from([0x62, 0xe4, 0x64, 0x64]);
  expect(sheetCells(answered(readCsv(old, "S")).sheets[0])).toEqual({ A1: { value: "bädd" } });
});

it("refuses what is no text, nothing at all, and more than the grid takes", () => {
  expect(readCsv(Uint8Array.from([1, 0, 2]), "S")).toEqual({ problem: "not-text" });
  expect(readCsv(new Uint8Array(), "S")).toEqual({ problem: "empty-file" });
  const million = new TextEncoder().encode("1\n".repeat(1_000_000));
  expect(readCsv(million, "S")).toEqual({ problem: "too-many-cells", cells: 1_000_000, limit: 600_000 });
});
