import type { TellableFinding } from "../nouns/report";

/** The treatments of a result as their headings name them, the usual among them; none where there is no heading. */
export function treatmentNames(finding: TellableFinding): readonly string[] {
  if (finding.finding === "many-treatments") return finding.treatments.map(({ name }) => name);
  const { usual, tried } =
    "names" in finding ? finding.names : { usual: finding.usual.name, tried: finding.tried.name };
  return [usual, tried].filter((name) => name !== null);
}
