import type { Area, BookChart, BookSheet } from "../book";
import { chartXml } from "./chartXml";
import { addPart, type Draft, freePath, inside, write } from "./draft";
import { drawingXml, type PlacedChart } from "./drawingXml";

const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const types = "application/vnd.openxmlformats-officedocument";

/**
 * Adds the charts of a new sheet to the file, as charts of its own. A sheet with charts is one to be handed round: it
 * prints as wide as a page.
 *
 * @param path the sheet's part
 * @param xml its text
 * @returns its text, pointing at the charts; as it was where there are none
 */
export function addCharts(
  draft: Draft,
  { path, xml }: { readonly path: string; readonly xml: string },
  sheet: BookSheet,
): string {
  const charts = chartsOf(sheet);
  if (charts.length === 0) return xml;
  const drawing = freePath(draft, "xl/drawings/drawing");
  // The drawing's part is there first, so that its charts can be its own; its text knows their ids.
  const type = `${types}.drawing+xml`;
  const id = addPart(draft, path, { path: drawing, text: "", type, relation: `${office}/drawing` });
  const placed = charts.map(({ chart, block }): PlacedChart => {
    const part = {
      path: freePath(draft, "xl/charts/chart"),
      text: chartXml(chart),
      type: `${types}.drawingml.chart+xml`,
      relation: `${office}/chart`,
    };
    return { chart, block, id: addPart(draft, drawing, part) };
  });
  write(draft, drawing, drawingXml(placed));
  return inside(onePageWide(xml), "worksheet", `${landscape}<drawing r:id="${id}"/>`);
}

const landscape = '<pageSetup orientation="landscape" fitToHeight="0"/>';

function onePageWide(xml: string): string {
  return xml.replace(/<worksheet[^>]*>/, (root) => `${root}<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`);
}

/** A chart covers the merge of its cell. */
function chartsOf({ rows, merges }: BookSheet): readonly { readonly chart: BookChart; readonly block: Area }[] {
  return [...rows].flatMap(([row, columns]) =>
    [...columns].flatMap(([column, { chart }]) => {
      if (chart === undefined) return [];
      const merge = merges.find(({ top, left }) => top === row && left === column);
      return [{ chart, block: merge ?? { top: row, left: column, bottom: row, right: column } }];
    }),
  );
}
