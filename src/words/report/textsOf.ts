import type { Report } from "../../nouns/report";
import { newsletter } from "./newsletter";
import { slide } from "./slide";
import { talk } from "./talk";

/** A report's text for one occasion. */
export interface ReportText {
  readonly name: string;
  readonly text: string;
}

/** The report in three lengths, the longest first. */
export function textsOf(report: Report): readonly ReportText[] {
  return [
    { name: "For a talk", text: talk(report) },
    { name: "For a newsletter", text: newsletter(report) },
    { name: "For a slide", text: slide(report) },
  ];
}
