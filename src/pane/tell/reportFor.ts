import type { Report, Telling } from "../../nouns/report";
import { notesOn } from "../../nouns/trialNotes";
import { reportOf } from "../../words/report/reportOf";
import { notesToSearch, safetyLines } from "../../words/safety";
import { treatmentNames } from "../../words/treatmentNames";
import type { Context } from "../context";
import { plannedOn, withPlan } from "./plannedOn";
import type { Result } from "./results";
import type { TellForm } from "./tellForm";

/** The report of the results chosen, at least one, with what the form, the plan and the trial's notes say. */
export async function reportFor(
  chosen: readonly Result[],
  form: TellForm,
  { sheet }: Pick<Context, "sheet">,
): Promise<Report> {
  const home = chosen[0]?.sheet ?? "";
  const planned = await plannedOn(sheet, home);
  const notes = withPlan(notesOn(await sheet.notes(), home), planned);
  const given = form.given(planned);
  const findings = chosen.map(({ finding }) => finding);
  const telling: Telling = {
    ...given,
    findings,
    notes,
    safety: safetyLines([given.title, given.question, ...findings.flatMap(treatmentNames), ...notesToSearch(notes)]),
  };
  form.hint(planned, reportOf({ ...telling, title: "", question: planned.question }));
  return reportOf(telling);
}
