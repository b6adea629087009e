import { textOf } from "../xml/parts";
import type { Source } from "./openBook";

/** What is tied to rows and columns by their numbers, in a sheet's part, and what a grower calls it. */
const inSheets: readonly (readonly [RegExp, string])[] = [
  [/<(?:\w+:)?(?:drawing|legacyDrawing|picture|oleObjects)\b/, "pictures, charts or comments"],
  [/<(?:\w+:)?(?:conditionalFormatting|dataValidations)\b/, "rules for cells"],
  [/<(?:\w+:)?(?:tableParts|autoFilter|pivotTableDefinition)\b/, "tables or filters"],
  [
    /<(?:\w+:)?(?:hyperlinks|rowBreaks|colBreaks|protectedRanges|scenarios|customSheetViews|sparklineGroups)\b/,
    "links or page breaks",
  ],
  [
    /<(?:\w+:)?row\b[^>]*\s(?:customHeight|hidden|customFormat)\s*=\s*["'](?:1|true)/,
    "rows of their own height or look",
  ],
];

/**
 * What of a file would no longer fit if rows or columns were inserted: it is kept as it is, and not moved along.
 *
 * @returns in a grower's words; nothing where rows and columns may be inserted
 */
export function tiedParts({ parts, workbook }: Source, leftAlone: readonly string[]): readonly string[] {
  const xml = workbook.sheets.map(({ path }) => textOf(parts, path));
  const found = inSheets.filter(([pattern]) => xml.some((one) => pattern.test(one))).map(([, name]) => name);
  const named = /<(?:\w+:)?(?:definedName|pivotCache)\b/.test(textOf(parts, workbook.path));
  return [
    ...found,
    ...(named ? ["names of cells"] : []),
    ...(leftAlone.length > 0 ? ["formulas of other makers"] : []),
  ];
}
