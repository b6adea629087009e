import type { CellRange } from "../nouns/cellRange";

/** The arguments of a call by the parameter's name; null or missing for an omitted one. */
export type Given = Readonly<Record<string, CellRange | null | undefined>>;
