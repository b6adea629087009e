import reference from "../reference/trials.json";

/** Two groups' numbers. */
export interface Trial {
  readonly usual: readonly number[];
  readonly tried: readonly number[];
}

/** The trial of that name in tests/reference/trials.json, whose R script says where it comes from. */
export function trialOf(name: string): Trial {
  const found = new Map<string, Trial>(Object.entries(reference.cases)).get(name);
  if (found === undefined) throw new Error(`no trial ${name}`);
  return found;
}
