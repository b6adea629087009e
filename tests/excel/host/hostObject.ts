/** One of Excel's objects as a request names it: names are those on the wire, "UsedRange" for `usedRange`. */
export interface HostObject {
  /** Objects reached through a property. */
  readonly objects?: Readonly<Record<string, () => HostObject>>;
  /** Plain properties that can be loaded. */
  readonly properties?: Readonly<Record<string, () => unknown>>;
  readonly settable?: Readonly<Record<string, (value: unknown) => void>>;
  /** Methods that give an object, something plain, or nothing. */
  readonly methods?: Readonly<Record<string, (...given: unknown[]) => unknown>>;
  /** A collection's item by its id or name. */
  readonly item?: (id: unknown) => HostObject;
  readonly items?: () => readonly HostObject[];
  /** True for what an …OrNullObject method gives when there is nothing. */
  readonly missing?: boolean;
}

/** Excel's own refusal of a request: its code is what `OfficeExtension.Error` carries. */
export interface HostRefusal {
  readonly refusal: string;
}

/** Makes a refusal to throw; codes are those of the reference, Excel.ErrorCodes. */
export function refusal(code: string): HostRefusal {
  return { refusal: code };
}
