import { addressOf, areaOf } from "./area";
import { type HostObject, refusal } from "./hostObject";
import { type Chart, contentOf, type Workbook } from "./workbook";

/** The tables of a sheet. Excel refuses one that lies over another, or whose headings are not all texts that differ. */
export function tablesObject(book: Workbook, sheet: string): HostObject {
  return {
    methods: {
      Add: (address, hasHeaders) => {
        const area = areaOf(addressGiven(address), sheet);
        if (area === null) throw refusal("InvalidArgument");
        const where = addressOf(area);
        if (hasHeaders !== true || headings(book, where).some((text, at, all) => text === "" || all.indexOf(text) < at))
          throw refusal("InvalidArgument");
        book.tables.push(where);
        return { settable: { ShowFilterButton: () => undefined } };
      },
    },
  };
}

function headings(book: Workbook, address: string): readonly string[] {
  const area = areaOf(address, "");
  if (area === null) throw refusal("InvalidArgument");
  return Array.from({ length: area.columns }, (_, at) =>
    String(contentOf(book, { ...area, column: area.column + at }).value ?? ""),
  );
}

/** The charts of a sheet: each keeps what is set, by its path. */
export function chartsObject(book: Workbook, sheet: string): HostObject {
  return {
    methods: {
      Add: (type, source) => {
        if (book.refused.has("chart")) throw refusal("GeneralException");
        const chart: Chart = { sheet, type: String(type), source: addressGiven(source), set: new Map() };
        book.charts.push(chart);
        return chartObject(chart);
      },
    },
  };
}

function chartObject(chart: Chart): HostObject {
  const part = (path: string, settable: readonly string[], objects: Record<string, () => HostObject> = {}) => ({
    objects,
    settable: Object.fromEntries(
      settable.map((name) => [name, (value: unknown) => void chart.set.set(`${path}/${name}`, value)]),
    ),
  });
  const axis = (path: string) =>
    part(path, ["Minimum", "Visible", "ReversePlotOrder"], {
      MajorGridlines: () => part(`${path}/lines`, ["Visible"]),
    });
  return {
    ...part("chart", [], {
      Title: () => part("title", ["Text"]),
      Legend: () => part("legend", ["Visible"]),
      Axes: () => ({ objects: { CategoryAxis: () => axis("names"), ValueAxis: () => axis("figures") } }),
      Series: () => ({ methods: { GetItemAt: () => seriesObject(chart, part) } }),
    }),
    methods: { SetPosition: (first, last) => void chart.set.set("place", `${first}:${last}`) },
  };
}

type Part = (path: string, settable: readonly string[], objects?: Record<string, () => HostObject>) => HostObject;

function seriesObject(chart: Chart, part: Part): HostObject {
  const point = (at: unknown): HostObject => ({
    objects: {
      Format: () => ({
        objects: {
          Fill: () => ({
            methods: { SetSolidColor: (colour) => void chart.set.set(`point ${String(at)}`, colour) },
          }),
        },
      }),
    },
  });
  return {
    ...part("series", ["Name", "HasDataLabels"], {
      DataLabels: () => part("labels", ["NumberFormat"]),
      Points: () => ({ methods: { GetItemAt: point } }),
    }),
    methods: { SetXAxisValues: (names) => void chart.set.set("series/names", addressGiven(names)) },
  };
}

/** A range's address, or the text of one. */
function addressGiven(given: unknown): string {
  const { properties } = given as HostObject;
  return String(properties?.Address?.() ?? given);
}

/** How a sheet prints. */
export function pageLayout(book: Workbook, sheet: string): HostObject {
  return {
    settable: {
      Orientation: () => {
        if (book.refused.has("page")) throw refusal("GeneralException");
      },
      Zoom: (zoom) => {
        if ((zoom as { horizontalFitToPages?: number }).horizontalFitToPages === 1) book.onePageWide.add(sheet);
      },
    },
  };
}
