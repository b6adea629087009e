import type { PlantInModel } from "./treatmentModel";

/**
 * The treatments that beds link with each other: two are linked when a bed holds both. Only linked ones can be compared
 * within beds.
 *
 * @returns groups of treatment numbers, the first holding the first plant's; one group when all are linked
 */
export function connectedTreatments(plants: readonly PlantInModel[]): readonly (readonly number[])[] {
  const groups: Set<number>[] = [];
  const inBed = new Map<number, Set<number>>();
  for (const { treatment, bed } of plants) inBed.set(bed, (inBed.get(bed) ?? new Set()).add(treatment));
  for (const together of inBed.values()) {
    const touched = groups.filter((group) => [...together].some((treatment) => group.has(treatment)));
    const merged = new Set([...touched.flatMap((group) => [...group]), ...together]);
    for (const group of touched) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups.map((group) => [...group].sort((one, other) => one - other));
}
