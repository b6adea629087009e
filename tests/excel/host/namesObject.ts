import type { Area } from "./area";
import { areaOf } from "./area";
import { type HostObject, refusal } from "./hostObject";
import type { Workbook } from "./workbook";

/**
 * The names that the workbook gives to cells, or those of one sheet.
 *
 * @param scope the sheet whose own names they are, with its exclamation mark; "" for the workbook's
 */
export function namesObject(
  book: Workbook,
  rangeObject: (book: Workbook, area: Area) => HostObject,
  scope = "",
): HostObject {
  const item = (given: unknown): HostObject => {
    const name = String(given);
    const address = book.names.get(scope + name);
    if (address === undefined) throw refusal("ItemNotFound");
    const area = areaOf(address, "");
    return {
      properties: { Id: () => name, Name: () => name },
      methods: {
        GetRange: () => {
          if (area === null) throw refusal("InvalidArgument");
          return rangeObject(book, area);
        },
        GetRangeOrNullObject: () => (area === null ? { missing: true } : rangeObject(book, area)),
        Delete: () => {
          book.names.delete(name);
        },
      },
    };
  };
  return {
    item,
    items: () => [...book.names.keys()].map(item),
    methods: {
      GetItemOrNullObject: (name) => (book.names.has(scope + String(name)) ? item(name) : { missing: true }),
      Add: (name, reference) => {
        if (book.names.has(String(name))) throw refusal("InvalidArgument");
        book.names.set(String(name), addressIn(reference));
        return item(name);
      },
    },
  };
}

/** A range stands for itself, a text for a reference. */
function addressIn(reference: unknown): string {
  const { properties } = reference as HostObject;
  return String(properties?.Address?.() ?? reference);
}
