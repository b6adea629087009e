import type { Caution } from "../../src/nouns/caution";
import { cell, row } from "./records";

const losses = [
  { name: "Bare soil", role: "usual", lost: 0, setOut: 8 },
  { name: null, role: "new", lost: 1, setOut: 8 },
] as const;

/** At least one of every caution, and where a sentence has two shapes, both. Not in order of importance. */
export const typicalCautions: readonly Caution[] = [
  { caution: "C01", plants: [2, 2], pairs: false, mostOneSided: 1 / 3 },
  { caution: "C01", plants: [3, 8], pairs: false, mostOneSided: 1 / 165 },
  { caution: "C01", plants: [4, 4], pairs: true, mostOneSided: 0.125 },
  { caution: "C01", plants: [1, 1], pairs: true, mostOneSided: 1 },
  { caution: "C02" },
  { caution: "C03", losses, change: 0.4413621, changeLostAsZero: 0.2611919, strong: false, countedAsZero: false },
  { caution: "C03", losses, change: 0.4413621, changeLostAsZero: 0.4413621, strong: false, countedAsZero: false },
  { caution: "C03", losses, change: 0.2611919, changeLostAsZero: 0.2611919, strong: true, countedAsZero: true },
  {
    caution: "C03",
    losses: [losses[1]],
    change: { absent: "usual-not-above-zero" },
    changeLostAsZero: { absent: "usual-not-above-zero" },
    strong: true,
    countedAsZero: false,
  },
  { caution: "C04" },
  { caution: "C05", because: "little" },
  { caution: "C05", because: "unsteady" },
  { caution: "C06", places: [cell("D4")] },
  { caution: "C06", places: [row("new", 3)] },
  { caution: "C06", places: [cell("D4"), cell("D7")] },
  { caution: "C06", places: [cell("D4"), cell("D7"), cell("E2"), cell("E3"), cell("E4")] },
  { caution: "C07", name: "Straw", role: "new" },
  { caution: "C07", name: null, role: "usual" },
  { caution: "C12" },
  { caution: "C14", count: 1 },
  { caution: "C14", count: 6 },
  { caution: "C15", zeros: 1 },
  { caution: "C15", zeros: 3 },
  { caution: "C16", change: 1.36 },
  { caution: "C16", change: 2 },
  { caution: "C17" },
  { caution: "C21", place: cell("D8") },
  { caution: "C21", place: row("new", 3) },
  { caution: "C22" },
  { caution: "C27", unevenness: 0.35 },
  { caution: "C28" },
  { caution: "C29" },
  { caution: "C30" },
  { caution: "C35", place: cell("D10") },
  { caution: "C35", place: row("usual", 9) },
];
