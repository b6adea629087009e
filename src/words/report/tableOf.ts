import type { ManyTreatments, TreatmentFound } from "../../nouns/findings/manyTreatments";
import type { ManyTrials } from "../../nouns/findings/manyTrials";
import type { TotalFound, TotalsOnly } from "../../nouns/findings/totalsOnly";
import type { Group, TwoTreatments } from "../../nouns/findings/twoTreatments";
import type { UpDown } from "../../nouns/findings/upDown";
import type { WorthIt } from "../../nouns/findings/worthIt";
import { isKnown, type Known, type Limits } from "../../nouns/known";
import type { ReportColumn, ReportTable, TellableFinding } from "../../nouns/report";
import { absenceText } from "../absence";
import { sentenceStart } from "../sentenceStart";
import { shortLabel } from "../shortLabel";
import { ofPair } from "./headings";

type Figure = string | number | null;

/** The figures of a result, a row a treatment, the usual first; of several trials a row a trial. */
export function tableOf(finding: TellableFinding, unit: string): ReportTable {
  switch (finding.finding) {
    case "two-treatments":
      return { columns: plantColumns(unit), rows: twoRows(finding) };
    case "many-treatments":
      return { columns: plantColumns(unit), rows: manyRows(finding) };
    case "many-trials":
      return { columns: trialColumns(finding), rows: trialRows(finding) };
    case "totals-only":
      return totalsTable(finding, unit);
    case "up-down":
      return averagesTable(finding, unit);
    case "worth-it":
      return moneyTable(finding, unit);
  }
}

function totalsTable(found: TotalsOnly, unit: string): ReportTable {
  const row = (name: string, { total, plants, perPlant }: TotalFound) => [
    name,
    figure(total),
    plants,
    figure(perPlant),
  ];
  return {
    columns: [text("Treatment"), amount(named("Total", unit)), count("Plants"), amount(average(unit)), ...changes],
    rows: withChange(found, row(usualName(found), found.usual), row(triedName(found), found.tried)),
  };
}

function averagesTable(found: UpDown, unit: string): ReportTable {
  const usual = [usualName(found), found.usualPlants, found.usualMean];
  return {
    columns: [text("Treatment"), count("Plants"), amount(average(unit)), ...changes],
    rows: withChange(found, usual, [triedName(found), found.triedPlants, found.triedMean]),
  };
}

function moneyTable(found: WorthIt, unit: string): ReportTable {
  const { left, leftRange, usualPlants, triedPlants, usualMean, triedMean } = found;
  const money = [decimal("Money left per plant"), decimal("At the lowest"), decimal("At the highest")];
  return {
    columns: [text("Treatment"), count("Plants"), amount(average(unit)), ...money],
    rows: [
      [usualName(found), usualPlants, usualMean, ...usualChange],
      [triedName(found), triedPlants, triedMean, left, figure(leftRange.low), figure(leftRange.high)],
    ],
  };
}

const text = (heading: string): ReportColumn => ({ heading, format: "text" });
const count = (heading: string): ReportColumn => ({ heading, format: "count" });
const amount = (heading: string): ReportColumn => ({ heading, format: "amount" });
const percent = (heading: string): ReportColumn => ({ heading, format: "percent" });
const decimal = (heading: string): ReportColumn => ({ heading, format: "decimal" });
const changes = [percent("Change"), percent("At the lowest"), percent("At the highest")];

function named(heading: string, unit: string): string {
  return unit === "" ? heading : `${heading} (${unit})`;
}

function average(unit: string): string {
  return named("Average per plant", unit);
}

function plantColumns(unit: string): readonly ReportColumn[] {
  const plants = [count("Set out"), count("Lost"), count("Counted")];
  return [text("Treatment"), ...plants, amount(average(unit)), percent("Unevenness"), ...changes];
}

function twoRows(found: TwoTreatments): readonly (readonly Figure[])[] {
  const row = (name: string, group: Group): Figure[] => [
    name,
    setOut(group, found),
    group.lost.length,
    group.plants.length,
    figure(group.mean),
    figure(group.unevenness),
  ];
  return withChange(found, row(usualName(found), found.usual), row(triedName(found), found.tried));
}

/** With pairs, plants count only where both of a pair do, so that the rows say how many were set out. */
function setOut(
  { plants, lost, notRecorded }: Pick<Group, "plants" | "lost" | "notRecorded">,
  { pairs, lostPlants }: Pick<TwoTreatments, "pairs" | "lostPlants">,
): number {
  if (pairs !== null) return pairs.complete + pairs.incomplete;
  return plants.length + notRecorded.length + (lostPlants === "leave out" ? lost.length : 0);
}

function manyRows(found: ManyTreatments): readonly (readonly Figure[])[] {
  const row = (one: TreatmentFound): Figure[] => [
    sentenceStart(shortLabel(one.name)),
    setOut(one, { pairs: null, lostPlants: found.lostPlants }),
    one.lost.length,
    one.plants.length,
    figure(one.meanBedsRemoved ?? one.mean),
    figure(found.unevenness),
    ...(one.isUsual ? usualChange : one.againstUsual === null ? [null, null, null] : changeFigures(one.againstUsual)),
  ];
  return found.treatments.toSorted((one, other) => Number(other.isUsual) - Number(one.isUsual)).map(row);
}

const usualChange: readonly Figure[] = ["the usual", null, null];

function withChange(
  found: { readonly change: Known; readonly changeRange: Limits },
  usual: readonly Figure[],
  tried: readonly Figure[],
): readonly (readonly Figure[])[] {
  return [
    [...usual, ...usualChange],
    [...tried, ...changeFigures(found)],
  ];
}

function changeFigures({
  change,
  changeRange,
}: {
  readonly change: Known;
  readonly changeRange: Limits;
}): readonly Figure[] {
  return [figure(change), figure(changeRange.low), figure(changeRange.high)];
}

function figure(known: Known): Figure {
  return isKnown(known) ? known : absenceText(known);
}

function trialColumns(found: ManyTrials): readonly ReportColumn[] {
  return [text(sentenceStart(found.rowIs)), amount(usualName(found)), amount(triedName(found)), ...changes];
}

function trialRows({ trials, change, changeRange }: ManyTrials): readonly (readonly Figure[])[] {
  return [
    ...trials.map(({ name, usual, tried, change: one }, at): Figure[] => [
      shortLabel(name ?? "") || `${at + 1}`,
      usual,
      tried,
      one,
      null,
      null,
    ]),
    ["All together", null, null, ...changeFigures({ change, changeRange })],
  ];
}

function usualName(finding: Parameters<typeof ofPair>[0]): string {
  return sentenceStart(ofPair(finding).usual);
}

function triedName(finding: Parameters<typeof ofPair>[0]): string {
  return sentenceStart(ofPair(finding).tried);
}
