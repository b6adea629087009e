import type { Area, BookChart } from "../book";
import { escaped } from "../xml/xml";

/** A chart on a sheet, and the id under which the drawing points at its part. */
export interface PlacedChart {
  readonly chart: BookChart;
  readonly block: Area;
  readonly id: string;
}

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const drawings = "http://schemas.openxmlformats.org/drawingml/2006";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/**
 * The part that says where a sheet's charts lie (ECMA-376 part 1, 20.5), with the figures in words for those who do not
 * see.
 */
export function drawingXml(charts: readonly PlacedChart[]): string {
  return (
    `${head}<xdr:wsDr xmlns:xdr="${drawings}/spreadsheetDrawing" xmlns:a="${drawings}/main">` +
    `${charts.map(anchored).join("")}</xdr:wsDr>`
  );
}

function anchored({ chart: { title, bars }, block, id }: PlacedChart, at: number): string {
  const words = [title, ...bars.map(({ name, figure }) => `${name}: ${figure}`)].join(". ");
  return (
    `<xdr:twoCellAnchor>${corner("from", block.top, block.left)}${corner("to", block.bottom + 1, block.right + 1)}` +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${at + 2}" name="Chart ${at + 1}" ` +
    `descr="${escaped(words)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
    `<a:graphic><a:graphicData uri="${drawings}/chart"><c:chart xmlns:c="${drawings}/chart" xmlns:r="${office}" ` +
    `r:id="${id}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`
  );
}

/** Rows and columns count from 0; the far corner is the first cell beyond. */
function corner(which: "from" | "to", row: number, column: number): string {
  const offsets = `<xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff>`;
  return `<xdr:${which}>${offsets}</xdr:${which}>`;
}
