import type { Sheet } from "../../host/sheet";
import type { Cell } from "../../nouns/cell";
import type { TrialNotes } from "../../nouns/trialNotes";
import { places, planTitle } from "../record/trialLayout";

/** What a record sheet says was settled before planting; a text is "" and a figure null where it does not. */
export interface Planned {
  readonly question: string;
  readonly drawNumber: number | null;
  /** Without its unit: "Total per plant". */
  readonly measure: string;
  readonly worthwhile: number | null;
  readonly stopDate: number | null;
}

const nothing: Planned = { question: "", drawNumber: null, measure: "", worthwhile: null, stopDate: null };

/** Reads the plan on the sheet of a result; any other sheet than a record sheet says nothing. */
export async function plannedOn(sheet: Sheet, home: string): Promise<Planned> {
  const { cells } = await sheet.read(`A1:E${places.heading}`, home);
  if (cells[0]?.[0] !== planTitle) return nothing;
  const at = (address: string): Cell => cells[Number(address.slice(1)) - 1]?.[address.charCodeAt(0) - 65] ?? null;
  return {
    question: textOf(at(places.question)),
    drawNumber: numberOf(at(places.drawNumber)),
    measure: textOf(at(places.measure)).replace(/\s*\([^()]*\)\s*$/, ""),
    worthwhile: numberOf(at(places.worthwhile)) || null,
    stopDate: numberOf(at(places.stopDate)),
  };
}

/** The trial's notes, and what the plan says where they say nothing. */
export function withPlan(notes: TrialNotes, { measure, worthwhile, stopDate }: Planned): TrialNotes {
  return {
    ...notes,
    measure: notes.measure || withinSentence(measure),
    worthwhile: notes.worthwhile ?? worthwhile,
    stopDate: notes.stopDate ?? stopDate,
  };
}

/**
 * "Total per plant" as it stands within a sentence; a name further in, as in "Kilos of Romanesco", keeps its capital.
 */
function withinSentence(measure: string): string {
  const [first = ""] = measure.split(" ");
  return first.slice(1) === first.slice(1).toLowerCase() ? first.toLowerCase() + measure.slice(first.length) : measure;
}

function textOf(cell: Cell): string {
  return typeof cell === "string" ? cell : "";
}

function numberOf(cell: Cell): number | null {
  return typeof cell === "number" ? cell : null;
}
