import type { BookChart } from "../book";
import { escaped } from "../xml/xml";

const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const drawings = "http://schemas.openxmlformats.org/drawingml/2006";
/** The usual and the others, as in the pane's pictures. */
const colours = { usual: "7A5C12", other: "2D6A2E" } as const;

/**
 * A chart's own part (ECMA-376 part 1, 21.2), with its names and figures in it: it shows the report as it was made,
 * even when cells are moved. The order of the tags is the standard's.
 */
export function chartXml({ title, bars, pattern }: BookChart): string {
  const low = bars.every(({ figure }) => figure >= 0) ? '<c:min val="0"/>' : "";
  return (
    `${head}<c:chartSpace xmlns:c="${drawings}/chart" xmlns:a="${drawings}/main"><c:roundedCorners val="0"/><c:chart>` +
    `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="1200" b="1"/></a:pPr>` +
    `<a:r><a:rPr lang="en-US" sz="1200" b="1"/><a:t>${escaped(title)}</a:t></a:r></a:p></c:rich></c:tx>` +
    '<c:overlay val="0"/></c:title><c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>' +
    `<c:barChart><c:barDir val="bar"/><c:grouping val="clustered"/><c:varyColors val="0"/>${series({ title, bars, pattern })}` +
    '<c:gapWidth val="60"/><c:axId val="1"/><c:axId val="2"/></c:barChart>' +
    '<c:catAx><c:axId val="1"/><c:scaling><c:orientation val="maxMin"/></c:scaling><c:delete val="0"/>' +
    '<c:axPos val="l"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>' +
    '<c:crossAx val="2"/><c:crosses val="autoZero"/></c:catAx>' +
    `<c:valAx><c:axId val="2"/><c:scaling><c:orientation val="minMax"/>${low}</c:scaling><c:delete val="1"/>` +
    '<c:axPos val="t"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>' +
    '<c:crossAx val="1"/><c:crosses val="autoZero"/></c:valAx></c:plotArea>' +
    '<c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>'
  );
}

function series({ title, bars, pattern }: BookChart): string {
  const format = escaped(pattern);
  const points = bars.flatMap(({ usual }, at) =>
    usual
      ? [
          `<c:dPt><c:idx val="${at}"/><c:invertIfNegative val="0"/><c:bubble3D val="0"/>${filled(colours.usual)}</c:dPt>`,
        ]
      : [],
  );
  return (
    `<c:ser><c:idx val="0"/><c:order val="0"/><c:tx><c:v>${escaped(title)}</c:v></c:tx>${filled(colours.other)}` +
    `<c:invertIfNegative val="0"/>${points.join("")}` +
    `<c:dLbls><c:numFmt formatCode="${format}" sourceLinked="0"/><c:showLegendKey val="0"/><c:showVal val="1"/>` +
    '<c:showCatName val="0"/><c:showSerName val="0"/><c:showPercent val="0"/><c:showBubbleSize val="0"/></c:dLbls>' +
    `<c:cat><c:strLit>${listed(bars.map(({ name }) => name))}</c:strLit></c:cat>` +
    `<c:val><c:numLit><c:formatCode>${format}</c:formatCode>${listed(bars.map(({ figure }) => figure))}</c:numLit></c:val>` +
    "</c:ser>"
  );
}

function filled(colour: string): string {
  return `<c:spPr><a:solidFill><a:srgbClr val="${colour}"/></a:solidFill></c:spPr>`;
}

function listed(items: readonly (string | number)[]): string {
  const points = items.map((item, at) => `<c:pt idx="${at}"><c:v>${escaped(String(item))}</c:v></c:pt>`);
  return `<c:ptCount val="${items.length}"/>${points.join("")}`;
}
