import type { NewChart, OwnSheet } from "../ownSheet";

/** As in the pane's pictures. */
const colours = { usual: "#7A5C12", other: "#2D6A2E" } as const;

/** Makes tables of a sheet's blocks, and Excel's own charts beside them. The cells must stand there already. */
export function furnishExcelSheet(sheet: Excel.Worksheet, { tables, charts }: OwnSheet): void {
  for (const address of tables) {
    const table = sheet.tables.add(address, true);
    table.showFilterButton = false;
  }
  for (const chart of charts) addChart(sheet, chart);
}

/** Bars that lie, so that long names stay readable, the first on top; the figures stand at them instead of an axis. */
function addChart(sheet: Excel.Worksheet, { title, bars, names, figures, format, place }: NewChart): void {
  const chart = sheet.charts.add("BarClustered", sheet.getRange(figures), "Columns");
  const [first, last] = place.split(":");
  chart.setPosition(first ?? place, last);
  chart.title.text = title;
  chart.legend.visible = false;
  const series = chart.series.getItemAt(0);
  series.name = title;
  series.setXAxisValues(sheet.getRange(names));
  series.hasDataLabels = true;
  series.dataLabels.numberFormat = format;
  for (const [at, { usual }] of bars.entries()) {
    series.points.getItemAt(at).format.fill.setSolidColor(usual ? colours.usual : colours.other);
  }
  chart.axes.categoryAxis.reversePlotOrder = true;
  // From zero, so that lengths compare as figures do; below zero Excel starts there by itself.
  if (bars.every(({ figure }) => figure >= 0)) chart.axes.valueAxis.minimum = 0;
  chart.axes.valueAxis.majorGridlines.visible = false;
  chart.axes.valueAxis.visible = false;
}
