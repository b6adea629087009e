import type { FileProblem } from "./fileProblem";

type Sentences = {
  readonly [Kind in FileProblem["problem"]]: (problem: Extract<FileProblem, { problem: Kind }>) => string;
};

const sentences: Sentences = {
  "empty-file": () => "This file is empty. Choose another one.",
  encrypted: () => "This workbook is locked with a password. Save a copy without a password in Excel, and open that.",
  "old-excel": () => "This is a workbook of the old kind, .xls. Save it as .xlsx in Excel, and open that.",
  "other-kind": () => "This is no .xlsx or .csv file. Save it as .xlsx in your spreadsheet program, and open that.",
  damaged: () => "This file is damaged, so that it cannot be read whole. Fetch it again from where you have it.",
  "not-text": () =>
    "This file is no table of text. Save it as .csv or .xlsx in your spreadsheet program, and open that.",
  "too-large": ({ megabytes, limit }) =>
    `This file has ${megabytes} MB. Up to ${limit} MB can be opened here. Save the sheets you need on their own.`,
  bomb: ({ megabytes, limit }) =>
    `This file would unpack to ${megabytes} MB. Up to ${limit} MB can be opened here. Save the sheets you need on their own.`,
  "too-many-cells": ({ cells, limit }) =>
    `This file has ${grouped(cells)} cells. Up to ${grouped(limit)} can be opened here. Save the rows you need on their own.`,
};

/** Why a file was refused, and what to do. Nothing has been changed when this is shown. */
export function fileSentence(problem: FileProblem): string {
  return (sentences[problem.problem] as (problem: FileProblem) => string)(problem);
}

/** 600 000 */
function grouped(number: number): string {
  return String(number).replaceAll(/\B(?=(?:\d{3})+$)/g, " ");
}
