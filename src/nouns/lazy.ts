/** A fact that is worked out when it is first asked for, and then remembered. */
export type Lazy<Fact> = () => Fact;

/** Remembers what `work` gives, so that it runs once at most. */
export function lazy<Fact>(work: () => Fact): Lazy<Fact> {
  let known: { readonly fact: Fact } | null = null;
  return () => {
    known ??= { fact: work() };
    return known.fact;
  };
}
