/** One plant: its treatment and its bed, as labels. */
export type Stand = readonly [treatment: string, bed: string];

/**
 * How treatments stand in beds: "shared" where two beds or more hold two treatments or more each, so that a comparison
 * within beds is possible; "own" where every treatment sits in one bed and every bed holds one treatment, so that bed
 * and treatment cannot be told apart (METHODS 9.2, C11 and C18); null for anything else. Plants without a label are
 * passed over.
 */
export function bedLayout(plants: readonly Stand[]): "shared" | "own" | null {
  const labelled = plants.filter(([treatment, bed]) => treatment !== "" && bed !== "");
  const [bedsOf, treatmentsIn] = [new Map<string, Set<string>>(), new Map<string, Set<string>>()];
  for (const [treatment, bed] of labelled) {
    bedsOf.set(treatment, (bedsOf.get(treatment) ?? new Set()).add(bed));
    treatmentsIn.set(bed, (treatmentsIn.get(bed) ?? new Set()).add(treatment));
  }
  if ([...treatmentsIn.values()].filter(({ size }) => size > 1).length > 1) return "shared";
  const alone = [...bedsOf.values(), ...treatmentsIn.values()].every(({ size }) => size === 1);
  return alone && bedsOf.size > 1 ? "own" : null;
}
