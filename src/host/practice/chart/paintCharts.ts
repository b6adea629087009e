import { type ICellCustomRender, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, type SheetInterceptorService } from "@univerjs/preset-sheets-core";
import { chartOf } from "./cellChart";
import { type Box, chartShapes, type Shape } from "./chartShapes";

const letters = "13px system-ui, sans-serif";
/** The usual and the new as in the pane's pictures. */
const colours = { paper: "#ffffff", frame: "#d3dacd", ink: "#1f241d", usual: "#7a5c12", new: "#2d6a2e" } as const;

/** Lets the grid paint the charts that its cells hold, over those cells, whenever it paints them. */
export function paintCharts(cells: SheetInterceptorService): void {
  cells.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    handler: (cell, _, next) => next(cell && chartOf(cell) !== undefined ? { ...cell, customRender: [painter] } : cell),
  });
}

const painter: ICellCustomRender = {
  drawWith(brush, { data, primaryWithCoord: { mergeInfo } }) {
    const chart = chartOf(data);
    if (chart === undefined) return;
    const { startX: left, startY: top, endX, endY } = mergeInfo;
    const box = { left, top, width: endX - left, height: endY - top };
    brush.font = letters;
    brush.textBaseline = "middle";
    fill(brush, box, colours.paper);
    brush.strokeStyle = colours.frame;
    brush.strokeRect(box.left, box.top, box.width, box.height);
    for (const shape of chartShapes(chart, box, (text) => brush.measureText(text).width)) paint(brush, shape);
  },
};

function paint(brush: CanvasRenderingContext2D, shape: Shape): void {
  if (shape.shape === "bar") fill(brush, shape.box, shape.usual ? colours.usual : colours.new);
  else if (shape.shape === "line") fill(brush, shape.box, colours.ink);
  else write(brush, shape);
}

function write(brush: CanvasRenderingContext2D, { text, left, middle, bold }: Extract<Shape, { shape: "text" }>): void {
  brush.font = bold ? `600 ${letters}` : letters;
  brush.fillStyle = colours.ink;
  brush.fillText(text, left, middle);
}

function fill(brush: CanvasRenderingContext2D, { left, top, width, height }: Box, colour: string): void {
  brush.fillStyle = colour;
  brush.fillRect(left, top, width, height);
}
