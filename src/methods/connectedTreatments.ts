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
    const [first, ...others] = groups.filter((group) => [...together].some((treatment) => group.has(treatment)));
    if (first === undefined) groups.push(together);
    else for (const treatment of [...others, together].flatMap((group) => [...group])) first.add(treatment);
    for (const group of others) groups.splice(groups.indexOf(group), 1);
  }
  return groups.map((group) => [...group].sort((one, other) => one - other));
}
