import type { LostPlants } from "../nouns/lostPlants";
import type { Entry, Plant, Sample } from "../nouns/sample";

/** The plant an entry stands for under the rule for lost plants; null when it has no usable number. */
export function plantOf(entry: Entry, rule: LostPlants): Plant | null {
  if (entry.kind === "value") return { value: entry.value, place: entry.place };
  return entry.kind === "lost" && rule === "count as zero" ? { value: 0, place: entry.place } : null;
}

/** The plants of a sample that count, in sheet order. */
export function usablePlants(sample: Sample, rule: LostPlants): readonly Plant[] {
  return sample.entries.map((entry) => plantOf(entry, rule)).filter((plant) => plant !== null);
}
